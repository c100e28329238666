using Chandlery.Core.Law;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Papers;

/// <summary>
/// The line at the foot of a paper for a place whose law is known in part. What was left out is for the maker, and stands in assessment
/// and technical file; whoever else reads the paper must know that there is something.
/// </summary>
internal static class LeftOutLine
{
    private const string Key = "partlyChecked";
    private const double LeastXHeightMm = 1;
    private const double XHeightOfPage = 0.0045;
    private const double MostOfWidth = 0.9;
    private const double FromFoot = 0.025;
    private const double MostFromFootMm = 6;

    /// <summary>The pages with their lines; a page keeps its own where it has no room.</summary>
    /// <param name="document">The paper.</param>
    /// <param name="places">Codes of the places.</param>
    /// <param name="languageOf">The language of a page, by its number from 0.</param>
    public static PaperDocument On(PaperDocument document, IEnumerable<string> places, Func<int, Language> languageOf)
    {
        string codes = string.Join(", ", places);
        return document with { Pages = [.. document.Pages.Select((page, i) => On(page, codes, languageOf(i)))] };
    }

    // In the margin, where no paper has anything else.
    private static Scene On(Scene page, string codes, Language language)
    {
        Face face = Face.Of(Weight.Regular);
        string text = $"{codes}: {language.Words[Key]}";
        double xHeight = Math.Max(LeastXHeightMm, page.HeightMm * XHeightOfPage);
        TextItem whole = Strokes.Text(text, face, 0, 0, xHeight / face.XHeight, Ink.Black);
        double size = whole.SizeMm * Math.Min(1, page.WidthMm * MostOfWidth / whole.WidthMm);
        TextItem line = whole with { SizeMm = size };
        double left = (page.WidthMm - line.WidthMm) / 2;
        double baseline = page.HeightMm - Math.Min(MostFromFootMm, page.HeightMm * FromFoot);
        var told = new TaggedItem(TagRole.Paragraph, [line.Moved(left, baseline)]) { Language = language.Code };
        return page with { Items = [.. page.Items, told] };
    }
}
