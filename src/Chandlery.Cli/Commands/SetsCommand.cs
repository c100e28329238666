using System.CommandLine;
using System.Text.Json;
using Chandlery.Cli.Answers;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.SafetyFiles.Records;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Records;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery sets</c>: gift sets of several products, what their boxes bear and what stops their sale.</summary>
internal static class SetsCommand
{
    public static Command Build()
    {
        var options = new CommonOptions();
        Option<string?> into = KeptFolder.Out();
        var command = new Command(
            "sets",
            "Say of each gift set of a folder what is in it, which labels its box bears, which cards go into it, and what stops its sale."
        );
        options.AddTo(command);
        Option<bool> json = JsonOption.Of("sets");
        command.Add(into);
        command.Add(json);
        command.SetAction(parse =>
            Session.Run(parse, options, (session, all) => Run(session, all, parse.GetValue(into), parse.GetValue(json)))
        );
        return command;
    }

    private static int Run(Session session, IReadOnlyList<Assessment> assessments, string? into, bool json)
    {
        var answers = new List<SetAnswer>();
        var problems = new Problems();
        var finder = new SetFinder(session.Lawbook, assessments);
        var files = new List<PendingFile>();
        PaperShop? shop = into is null ? null : session.OpenShop(problems);
        bool stops = false;
        List<GiftSet> sets = [.. session.Declarations.Catalogue.OfKind<GiftSet>()];
        if (sets.Count == 0)
        {
            session.Complain("No gift set is declared in this folder: a set is a .yaml file with 'declares: set'.");
        }

        foreach (GiftSet set in sets)
        {
            var own = new Problems();
            IReadOnlyList<SetSheet> sheets = finder.Of(set, own);
            problems.AddRange(own.Found);
            foreach (SetSheet sheet in sheets)
            {
                stops |= sheet.StopsSale;
                answers.Add(SetAnswer.Of(sheet));
                if (!json)
                {
                    Say(session, sheet);
                }

                if (shop is not null && RecordDocument.Make(SetRecord.Of(sheet), shop, problems) is { } document)
                {
                    string prefix = sheets.Count == 1 ? "" : sheet.Edition.Id + "-";
                    files.Add(new PendingFile($"{prefix}{set.Id}-set.pdf", PdfDrawing.Draw(document)));
                }
            }
        }

        session.Write(files, into ?? ".");

        if (json)
        {
            session.Output.WriteLine(JsonSerializer.Serialize([.. answers], AnswerJson.Plain.SetAnswerArray));
        }

        return session.Close(new FolderReport(problems.Found, []), stops ? ExitCode.StopsSale : ExitCode.Fine);
    }

    private static void Say(Session session, SetSheet sheet)
    {
        session.Output.WriteLine(
            $"{sheet.Set.Name} ({sheet.Set.Id}), {sheet.Edition.Id}: {string.Join(", ", sheet.Lines.Select(l => $"{l.Count} x {l.Product.Candle.Name}"))}"
        );
        foreach (Finding f in sheet.Findings)
        {
            string clause = f.Clause.IsNone ? "" : $" [{f.Clause}]";
            session.Output.WriteLine($"- {(f.Gravity == Gravity.Stop ? "stops the sale: " : "")}{f.What}{clause}");
        }
    }
}
