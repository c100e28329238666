using Chandlery.Yaml;

namespace Chandlery.Paper.Papers;

/// <summary>A paper that was not made.</summary>
/// <param name="Why">The reason, in words that follow a colon and end with a full stop.</param>
/// <param name="IsDue">Whether something is amiss without it; otherwise nobody need have it yet.</param>
/// <param name="Problems">What is wrong with template or data; empty for other reasons.</param>
public sealed record MissingPaper(string Why, bool IsDue, IReadOnlyList<Problem> Problems) : PaperOutcome
{
    /// <summary>A paper that problems keep from being made.</summary>
    public static MissingPaper Because(Problems problems, bool isDue) => new(string.Join(' ', problems.Found), isDue, problems.Found);
}
