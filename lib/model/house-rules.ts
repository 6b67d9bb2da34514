/** What a house rule does to a look that breaks it. */
export type RuleSeverity = 'rules out' | 'lowers the score' | 'off';

/** Settings by rule id; what is absent keeps the rule's own default. */
export type HouseRuleSettings = Readonly<
  Record<string, { readonly severity?: RuleSeverity; readonly threshold?: number }>
>;
