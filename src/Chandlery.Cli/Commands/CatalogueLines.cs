using System.Collections.Concurrent;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;

namespace Chandlery.Cli.Commands;

/// <summary>The lines of the catalogue's table. Thousands of candles say the same few things, which are kept once.</summary>
internal sealed class CatalogueLines
{
    private readonly ConcurrentDictionary<string, string> said = new();

    /// <summary>The line of an assessed candle; may be called from several threads.</summary>
    public CatalogueLine Of(Assessment assessment)
    {
        CatalogueRow row = CatalogueRow.Of(assessment);
        return new CatalogueLine(
            [
                row.Id,
                row.Edition,
                Joined(row.Classes),
                row.SignalWord ?? "-",
                Joined(row.Statements),
                row.LimitsBroken.Count == 0 ? "held" : Once($"{row.LimitsBroken.Count} broken"),
                row.StopsSale ? "stopped" : "-",
            ],
            row.StopsSale
        );
    }

    /// <summary>The table of these lines.</summary>
    public static TextTable Table(IEnumerable<CatalogueLine> lines)
    {
        var table = new TextTable("candle", "law", "classes", "signal word", "statements", "limits", "sale");
        foreach (CatalogueLine line in lines)
        {
            table.Add(line.StopsSale, line.Cells);
        }

        return table;
    }

    private string Joined(IReadOnlyList<string> texts) => texts.Count == 0 ? "-" : Once(string.Join(", ", texts));

    private string Once(string text) => said.GetOrAdd(text, text);
}
