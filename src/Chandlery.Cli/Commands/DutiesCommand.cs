using System.CommandLine;
using System.Text.Json;
using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Core.SafetyFiles;
using Chandlery.Core.SafetyFiles.Duties;
using Chandlery.Core.SafetyFiles.Records;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Records;
using Chandlery.Register;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery duties</c>: what is due for a candle, done or open, and by what that is shown.</summary>
internal static class DutiesCommand
{
    public static Command Build()
    {
        var options = new CommonOptions(severalPaths: true);
        Option<bool> json = JsonOption.Of("duties");
        Option<string?> into = KeptFolder.Out();
        var command = new Command(
            "duties",
            "Say what is due for a candle beside its hazard label, by place and day: done or open, and which file shows it."
        );
        options.AddTo(command);
        command.Add(json);
        command.Add(into);
        command.SetAction(parse =>
            Session.Run(parse, options, (session, all) => Run(session, all, parse.GetValue(json), parse.GetValue(into)))
        );
        return command;
    }

    private static int Run(Session session, IReadOnlyList<Assessment> assessments, bool json, string? into)
    {
        DutyFinder Finder(Assessment a) => new(session.FolderOf(a).Catalogue, session.Lawbook);
        List<(Assessment Of, IReadOnlyList<DutyLine> Lines)> all = [.. assessments.Select(a => (a, Finder(a).Of(a)))];
        if (json)
        {
            session.Output.WriteLine(
                JsonSerializer.Serialize([.. all.SelectMany(d => d.Lines).Select(DutyReport.Of)], SafetyFileJson.Plain.DutyReportArray)
            );
        }
        else
        {
            all.ForEach(d => Table(session, d.Of, d.Lines));
        }

        var problems = new Problems();
        var files = new List<PendingFile>();
        PaperShop? shop = into is null ? null : session.OpenShop(problems);
        foreach ((Assessment a, IReadOnlyList<DutyLine> lines) in all)
        {
            foreach (Place place in Finder(a).WithoutRules(a))
            {
                session.Complain($"{a.Id}: no duties are known here for {place.Name}: that does not mean that there are none.");
            }

            if (
                shop is not null
                && RecordDocument.Make(RegisterHead.On(DutyRecord.Of(a, lines), session.FolderOf(a).Root), shop, problems) is { } document
            )
            {
                files.Add(new PendingFile($"{session.PrefixOf(a, all.Select(d => d.Of))}{a.Id}-duties.pdf", PdfDrawing.Draw(document)));
            }
        }

        session.Write(files, into ?? ".");

        return session.Close(
            new FolderReport(problems.Found, []),
            all.Exists(d => d.Lines.Any(l => l.State == DutyState.Open)) ? ExitCode.StopsSale : ExitCode.Fine
        );
    }

    private static void Table(Session session, Assessment a, IReadOnlyList<DutyLine> lines)
    {
        session.Output.WriteLine($"{a.Candle.Name} ({a.Id}), {a.Edition.Id}, as of {IsoDay.Plain(a.AsOf)}");
        var table = new TextTable("duty", "state", "what is due; shown by; clause");
        foreach (DutyLine l in lines.OrderBy(l => l.State == DutyState.Open ? 0 : 1))
        {
            table.Add(l.Duty.Id, a.Kind.Say(DutyRecord.Words(l.State)), $"{l.Duty.Says} -> {l.Shown} ({l.Duty.Clause})");
        }

        table.Write(session.Output, AssessCommand.Width);
    }
}
