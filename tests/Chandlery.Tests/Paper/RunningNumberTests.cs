using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Papers.LabelSheets;
using Chandlery.Paper.Proofs;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Paper;

/// <summary>Running numbers on labels, and rolls as PDF.</summary>
public sealed class RunningNumberTests
{
    private static IReadOnlyList<MeasuredPage> Print(string stock, params string[] options)
    {
        string folder = Directory.CreateTempSubdirectory("chandlery-numbers-").FullName;
        try
        {
            (int code, _, string errors) = Command.RunHere([
                "sheet",
                TestLaw.DemoFolder,
                "--stock",
                stock,
                "--as-of",
                "2026-11-20",
                "--out",
                folder,
                .. options,
            ]);
            Assert.True(Directory.GetFiles(folder, "*.pdf").Length == 1, $"{code}: {errors}");
            return MeasuredPage.ReadAll(File.ReadAllBytes(Directory.GetFiles(folder, "*.pdf")[0]));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void ARollAsPdfHasAPageOfItsSizeForEachLabel()
    {
        IReadOnlyList<MeasuredPage> pages = Print("roll-300-52x74", "--pdf", "--copies", "2");
        Assert.True(pages.Count > 0 && pages.Count % 2 == 0);
        Assert.All(pages, p => Assert.Equal((52, 74), (Math.Round(p.WidthMm, 2), Math.Round(p.HeightMm, 2))));
    }

    [Fact]
    public void EachCandleCountsFromTheFirstNumberWithAsManyDigits()
    {
        IReadOnlyList<MeasuredPage> pages = Print("roll-203-100x75", "--pdf", "--copies", "3", "--number-from", "98");
        Assert.True(pages.Count > 0 && pages.Count % 3 == 0);
        Assert.All(
            pages,
            (page, i) =>
            {
                string number = $"{98 + (i % 3):000}";
                Assert.Contains(page.Lines, l => l.Text.Split(' ').Contains(number));
            }
        );
    }

    [Theory]
    [InlineData("slate-jar", LabelForm.Rectangle, 130, 110)]
    [InlineData("fig-tin", LabelForm.Arch, 130, 160)]
    [InlineData("harbour-bowl", LabelForm.Circle, 190, 190)]
    public void ANumberTouchesNothingAndIsNoSmallerThanTheLawsText(string candle, LabelForm form, double width, double height)
    {
        Assessment a = TestLaw.Demo($"candles/{candle}.yaml");
        IReadOnlyList<Scene> pages = TestLabels.Make(a, TestLabels.Ask(form, width, height)).Fitted!.Pages;
        var label = new MadeLabel(new PaperDocument("t", "en", pages), new HashSet<string>());
        foreach (string? batch in new[] { a.BatchCode, null })
        {
            Scene before = label.Document.Pages[^1];
            Scene after = RunningNumbers.On(label, batch, 1234)!.With(7)[^1];
            TextItem number = Assert.IsType<TextItem>(after.Items[^1]);
            Assert.Equal("№ 0007", number.Shaped.Text);
            Assert.Equal(before.Items, after.Items.SkipLast(1));
            Assert.True(number.SizeMm >= before.All.OfType<TextItem>().Min(t => t.SizeMm));
            (double Left, double Top, double Right, double Bottom) own = Figures(number);
            Assert.All(before.All.OfType<TextItem>(), t => Assert.True(IsApart(own, Figures(t)), $"touches '{t.Shaped.Text}'"));
            Assert.All(
                before.Marks,
                m => Assert.True(IsApart(own, (m.XMm, m.YMm, m.XMm + m.WidthMm, m.YMm + m.HeightMm)), $"touches {m.Name}")
            );
        }
    }

    // From the baseline to the height of capitals and figures.
    private static (double Left, double Top, double Right, double Bottom) Figures(TextItem t) =>
        (t.XMm, t.BaselineMm - (t.SizeMm * 0.73), t.XMm + t.WidthMm, t.BaselineMm);

    private static bool IsApart(
        (double Left, double Top, double Right, double Bottom) a,
        (double Left, double Top, double Right, double Bottom) b
    ) => a.Right <= b.Left || b.Right <= a.Left || a.Bottom <= b.Top || b.Bottom <= a.Top;
}
