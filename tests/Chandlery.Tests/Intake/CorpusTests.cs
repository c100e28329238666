using System.Globalization;
using System.Text;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Sheets;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Intake;

/// <summary>
/// Reads the project's corpus of suppliers' sheets: three products in eight layouts, printed with four engines (our own,
/// LibreOffice, Chromium, LaTeX). The other three engines are outside software; the truth is what the corpus was made from.
/// </summary>
public sealed class CorpusTests(Xunit.Abstractions.ITestOutputHelper output)
{
    private static readonly string[] Layouts =
    [
        "own-lines-en",
        "writer-grid-de",
        "writer-stacked-en",
        "chromium-plain-en",
        "chromium-list-fr",
        "chromium-airy-fr",
        "latex-open-en",
        "latex-grid-de",
    ];

    [Fact]
    [Outside("PDFs printed by LibreOffice, Chromium and LaTeX")]
    public void Cells_are_read_right_and_whatever_is_not_is_marked()
    {
        var score = new CorpusScore();
        foreach (Truth truth in Truth.All())
        {
            foreach (string file in Layouts.Select(l => $"{truth.Id}.{l}.pdf"))
            {
                score.Add(file, truth, CorpusScore.Draft(file));
            }
        }

        output.WriteLine(Table(score));
        output.WriteLine(string.Join('\n', score.Differences));
        Assert.True(score.Fields.Values.Sum(f => f.Printed) > 2000);
        Assert.Equal(0, score.Fields.Values.Sum(f => f.Unmarked));
        Assert.InRange((double)score.Fields.Values.Sum(f => f.Right) / score.Fields.Values.Sum(f => f.Printed), 0.99, 1);
        Assert.InRange((double)score.Fields.Values.Sum(f => f.Right) / score.Fields.Values.Sum(f => f.Drafted), 0.99, 1);
    }

    private static string Table(CorpusScore score)
    {
        var table = new StringBuilder("field | printed | drafted | right | precision | recall | wrong and unmarked\n");
        foreach ((string field, FieldScore s) in score.Fields)
        {
            table.AppendLine(
                CultureInfo.InvariantCulture,
                $"{field} | {s.Printed} | {s.Drafted} | {s.Right} | {s.Precision:P1} | {s.Recall:P1} | {s.Unmarked}"
            );
        }

        return table.ToString();
    }
}
