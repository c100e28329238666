using System.CommandLine;
using System.Text.Json;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery catalogue</c>: all candles of a folder in a table.</summary>
internal static class CatalogueCommand
{
    private const int BarWidth = 30;

    public static Command Build()
    {
        var options = new CommonOptions();
        var json = new Option<bool>("--json") { Description = "Print for programs." };
        var command = new Command(
            "catalogue",
            "Assess every candle and batch of a folder at once and print a table. What is wrong with one does not hide the others."
        );
        options.AddTo(command);
        command.Add(json);
        command.SetAction(parse => Session.Guard(parse, session => Run(session, parse, options, parse.GetValue(json))));
        return command;
    }

    private static int Run(Session session, ParseResult parse, CommonOptions options, bool json)
    {
        var problems = new Problems();
        if (Folder.Open(parse.GetValue(options.Path)!, parse.GetValue(options.Data), problems) is not { } folder)
        {
            return session.Report(problems);
        }

        IReadOnlyList<CatalogueEntry<CatalogueRow>> entries = Assess(folder, parse.GetValue(options.AsOf), parse.GetValue(options.Place));
        List<Problem> wrong = [.. folder.Declarations.Problems.Found, .. entries.SelectMany(e => e.Problems).Distinct()];
        if (json)
        {
            session.Output.WriteLine(
                JsonSerializer.Serialize([.. entries.SelectMany(e => e.Results)], ComparedJson.Default.CatalogueRowArray)
            );
        }
        else
        {
            var table = new TextTable("candle", "law", "classes", "signal word", "statements", "limits", "sale");
            foreach (CatalogueRow row in entries.SelectMany(e => e.Results))
            {
                table.Add(
                    row.Id,
                    row.Edition,
                    Joined(row.Classes),
                    row.SignalWord ?? "-",
                    Joined(row.Statements),
                    row.LimitsBroken.Count == 0 ? "held" : $"{row.LimitsBroken.Count} broken",
                    row.StopsSale ? "stopped" : "-"
                );
            }

            session.Output.Write(table.Render(140));
        }

        foreach (Problem problem in wrong)
        {
            session.Complain(problem.ToString());
        }

        return wrong.Count > 0 ? ExitCode.BadInput
            : entries.Any(e => e.Results.Any(r => r.StopsSale)) ? ExitCode.StopsSale
            : ExitCode.Fine;
    }

    // Draws a progress bar on a terminal.
    private static IReadOnlyList<CatalogueEntry<CatalogueRow>> Assess(Folder folder, DateOnly asOf, string? place)
    {
        int count = folder.Declarations.Catalogue.OfKind<Candle>().Count() + folder.Declarations.Catalogue.OfKind<Batch>().Count();
        bool bar = !Console.IsErrorRedirected && count > 200;
        int shown = -1;
        IReadOnlyList<CatalogueEntry<CatalogueRow>> entries = CatalogueRun.Assess(
            folder.Declarations.Catalogue,
            folder.Lawbook,
            asOf,
            place,
            CatalogueRow.Of,
            bar
                ? done =>
                {
                    int filled = BarWidth * done / count;
                    if (Interlocked.Exchange(ref shown, filled) != filled)
                    {
                        Console.Error.Write($"\r[{new string('#', filled)}{new string('.', BarWidth - filled)}] {done} of {count}");
                    }
                }
                : null
        );
        if (bar)
        {
            Console.Error.WriteLine();
        }

        return entries;
    }

    private static string Joined(IReadOnlyList<string> texts) => texts.Count == 0 ? "-" : string.Join(", ", texts);
}
