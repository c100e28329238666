using System.Text.RegularExpressions;

namespace Chandlery.Core.Law;

/// <summary>An entry for a whole group of substances, told by words of their names.</summary>
/// <param name="IndexNumber">Its index number.</param>
/// <param name="Words">Words of which a member's name may have one.</param>
/// <param name="Unless">Words that take a substance out of the group.</param>
public sealed partial record AnnexGroup(string IndexNumber, IReadOnlyList<string> Words, IReadOnlyList<string> Unless)
{
    /// <summary>True where a substance of this name may be one of the group.</summary>
    public bool MayHold(string name)
    {
        string[] words = [.. Word().Matches(name).Select(m => m.Value.ToLowerInvariant())];
        return words.Any(Words.Contains) && !words.Any(Unless.Contains);
    }

    [GeneratedRegex(@"\p{L}+", RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
