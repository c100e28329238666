using UglyToad.PdfPig.Content;

namespace Chandlery.Intake.Pages;

/// <summary>The letters of a page that can be seen and read.</summary>
/// <param name="Page">The page.</param>
/// <param name="Letters">The letters, in their order.</param>
/// <param name="Doubts">What the page holds besides and was not read.</param>
/// <param name="ValueDoubt">Why no value from the page is certain; null when nothing speaks against them.</param>
/// <param name="IsUnreadable">True when the page has text whose letters its fonts do not tell.</param>
internal sealed record ReadablePage(
    Page Page,
    IReadOnlyList<Letter> Letters,
    IReadOnlyList<string> Doubts,
    string? ValueDoubt,
    bool IsUnreadable
)
{
    private const double MostlyUnmapped = 0.5;

    /// <summary>What of a page can be used.</summary>
    /// <param name="page">The page.</param>
    /// <param name="unmapped">How many letters of each of its fonts have no meaning.</param>
    public static ReadablePage Of(Page page, IReadOnlyDictionary<string, int> unmapped)
    {
        // A picture with its recognised text laid under it hides nothing: the text is what the picture shows, as far as it was recognised.
        bool isUnderPicture = PicturePage.Covers(page);
        (IReadOnlyList<Letter> seen, IReadOnlyList<Letter> hidden) = isUnderPicture ? (page.Letters, []) : LetterSight.Of(page);
        var doubts = new List<string>();
        if (LetterSight.Told(page, hidden) is { } told)
        {
            doubts.Add(told);
        }

        HashSet<string> dumb =
        [
            .. unmapped.Where(f => f.Value >= MostlyUnmapped * page.Letters.Count(l => l.FontName == f.Key)).Select(f => f.Key),
        ];
        List<Letter> readable = [.. seen.Where(l => l.FontName is null || !dumb.Contains(l.FontName))];
        if (readable.Count < seen.Count)
        {
            doubts.Add(
                $"page {page.Number} holds {seen.Count - readable.Count} letters of a font that does not say what they mean; they were not read"
            );
        }

        bool isPartly = unmapped.Any(f => !dumb.Contains(f.Key));
        string? valueDoubt =
            isPartly ? "some letters of its page have no meaning in their font, and others may stand for them"
            : isUnderPicture ? PicturePage.Doubt
            : null;
        return new ReadablePage(page, readable, doubts, valueDoubt, readable.Count < seen.Count);
    }
}
