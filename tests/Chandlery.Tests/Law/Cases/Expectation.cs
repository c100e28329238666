namespace Chandlery.Tests.Law.Cases;

/// <summary>One thing that a case says of the answer.</summary>
/// <param name="Question">What is looked at.</param>
/// <param name="Match">How much of it the case speaks of.</param>
/// <param name="Values">The codes, words or names that the case gives.</param>
internal sealed record Expectation(CaseQuestion Question, ExpectationMatch Match, IReadOnlyList<string> Values)
{
    /// <summary>What differs, in words; null when the answer is as expected.</summary>
    public string? DifferenceFrom(CaseAnswer answer)
    {
        List<string> found = [.. Question.Answer(answer)];
        bool holds = Match switch
        {
            ExpectationMatch.Include => Values.All(v => found.Exists(f => Meets(f, v))),
            ExpectationMatch.Exclude => !Values.Any(v => found.Exists(f => Meets(f, v))),
            ExpectationMatch.Only => found.All(Values.Contains),
            _ => found.Order(StringComparer.Ordinal).SequenceEqual(Values.Order(StringComparer.Ordinal)),
        };
        return holds ? null : $"{Question.Field}{Suffix(Match)}: expected {Listed(Values)}, found {Listed(found)}";
    }

    /// <summary>What a field's name ends in for each way of matching.</summary>
    public static string Suffix(ExpectationMatch match) => match == ExpectationMatch.Exact ? "" : match.ToString();

    private bool Meets(string found, string value) =>
        Question.Values == CaseValueKind.Text ? found.Contains(value, StringComparison.Ordinal) : found == value;

    private static string Listed(IReadOnlyCollection<string> values) => $"[{string.Join(", ", values)}]";
}
