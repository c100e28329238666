namespace Chandlery.Cli.Answers;

/// <summary>Something that begins or ends above a ceiling, for programs.</summary>
/// <param name="What">What begins or ends.</param>
/// <param name="Begins">True when it begins with more oil, false when it ends.</param>
/// <param name="SetBy">The ingredient, oil or wax that sets it.</param>
/// <param name="Clause">Where the rule stands, or whose limit it is.</param>
internal sealed record CeilingConsequence(string What, bool Begins, string SetBy, string Clause);
