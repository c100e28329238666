namespace Chandlery.Core.Law.AnnexVi;

/// <summary>The table as a text, such as one that a user puts in place of the program's own.</summary>
/// <param name="lines">Its lines without the head.</param>
internal sealed class TextLines(IReadOnlyList<string> lines) : AnnexLines
{
    private readonly Lazy<ILookup<string, string>> byNumber = new(() => ByNumber(lines));

    public override IEnumerable<string> Near(string number) => byNumber.Value[number];

    public override IEnumerable<string> All() => lines;

    private static ILookup<string, string> ByNumber(IReadOnlyList<string> lines) =>
        lines
            .GroupBy(AnnexLine.IndexOf)
            .SelectMany(entry => entry.SelectMany(AnnexLine.NumbersOf).Distinct().SelectMany(n => entry.Select(line => (n, line))))
            .ToLookup(pair => pair.n, pair => pair.line);
}
