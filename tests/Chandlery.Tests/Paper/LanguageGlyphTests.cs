using Chandlery.Core.Law;
using Chandlery.Paper.Fonts;
using Chandlery.Tests.Support;
using SkiaSharp;

namespace Chandlery.Tests.Paper;

/// <summary>The font must have a glyph for every sign of every language, or a label would print boxes.</summary>
public sealed class LanguageGlyphTests
{
    public static TheoryData<string> Languages() => [.. TestLaw.Lawbook.Languages.Codes];

    [Theory]
    [MemberData(nameof(Languages))]
    public void Every_sign_has_a_glyph(string code)
    {
        Language language = TestLaw.Lawbook.FindLanguage(code)!;
        SheetWords? sheet = TestLaw.Lawbook.SheetWords.Find(code);
        IEnumerable<string> texts =
        [
            language.Name,
            language.Caution,
            .. language.Official.Values,
            .. language.Printed.Values,
            .. language.Words.Values,
            .. language.Safety.Values,
            .. sheet?.Headings.Values ?? [],
            .. sheet?.Words.Values ?? [],
        ];
        foreach (Weight weight in Enum.GetValues<Weight>())
        {
            using var font = new SKFont(Face.Of(weight).Typeface);
            Assert.DoesNotContain(texts.SelectMany(t => t).Distinct(), sign => font.GetGlyph(sign) == 0);
        }
    }

    [Fact]
    public void A_sign_without_a_glyph_is_noticed()
    {
        using var font = new SKFont(Face.Of(Weight.Regular).Typeface);
        Assert.Equal(0, font.GetGlyph('\u4e00'));
    }
}
