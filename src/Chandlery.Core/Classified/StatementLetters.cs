using Chandlery.Core.Hazards;

namespace Chandlery.Core.Classified;

/// <summary>
/// Joins the letters that say more about a hazard: H360F of one cause beside H360D of another is H360FD (CLP Annex VI,
/// 1.1.2.1.2; joining several substances from memory). A cause without letters leaves the general statement, which speaks of all.
/// </summary>
internal static class StatementLetters
{
    // Effects on fertility and on the unborn child, known (capital) and suspected, in the order in which codes write them.
    private const string Effects = "FDfd";

    /// <summary>The statement for several causes.</summary>
    /// <param name="general">The statement without letters.</param>
    /// <param name="given">The statements of the causes.</param>
    public static StatementCode Join(StatementCode general, IReadOnlyCollection<StatementCode> given)
    {
        List<string> letters = [.. given.Select(g => g.Text[general.Text.Length..]).Distinct()];
        if (letters.Count == 0 || letters.Contains(""))
        {
            return general;
        }

        string all = string.Concat(letters);
        if (letters.Count == 1 || !all.All(Effects.Contains))
        {
            return letters.Count == 1 ? given.First() : general;
        }

        // What is known need not be suspected as well.
        IEnumerable<char> joined = Effects.Where(e => all.Contains(e) && !(char.IsLower(e) && all.Contains(char.ToUpperInvariant(e))));
        return StatementCode.Of(general.Text + string.Concat(joined));
    }
}
