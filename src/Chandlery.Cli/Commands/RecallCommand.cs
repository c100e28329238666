using System.CommandLine;
using Chandlery.Core.SafetyFiles.Recalls;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery recall</c>: who has what, and everything that is sent to them.</summary>
internal static class RecallCommand
{
    public static Command Build()
    {
        var batch = new Option<string?>("--batch") { Description = "Batch code, or name of the batch's file." };
        var lot = new Option<string?>("--lot") { Description = "The supplier's lot code, or name of the lot's file." };
        var oil = new Option<string?>("--oil") { Description = "Name of an oil's file, or part of its trade name." };
        var substance = new Option<string?>("--substance") { Description = "CAS number, or part of a name." };
        var hazard = new Option<string[]>("--hazard")
        {
            Description =
                "What the danger is, with its language: \"en: The vessel can crack.\" Again for each language; needed with --out.",
            AllowMultipleArgumentsPerToken = false,
        };
        Option<bool> json = JsonOption.Of("recall");
        var into = new Option<string?>("--out")
        {
            Description = "Folder to write into: notice, letters, shelf card, text for the web, form for the authority, list of receivers.",
        };
        Command command = KeptFolder.Build(
            "recall",
            "Find who has candles of a batch, of a lot that was bought, with an oil or a substance: how many were made, went out, are left. With --out write all that a recall sends out.",
            (folder, parse) =>
            {
                RecallQuery query =
                    parse.GetValue(batch) is { } b ? new RecallQuery(RecallBy.Batch, b)
                    : parse.GetValue(lot) is { } l ? new RecallQuery(RecallBy.Lot, l)
                    : parse.GetValue(oil) is { } o ? new RecallQuery(RecallBy.Oil, o)
                    : new RecallQuery(RecallBy.Substance, parse.GetValue(substance)!);
                return new RecallRun(folder).Run(query, parse.GetValue(hazard) ?? [], parse.GetValue(json), parse.GetValue(into));
            },
            batch,
            lot,
            oil,
            substance,
            hazard,
            json,
            into
        );
        command.Validators.Add(result =>
        {
            int named = new[] { batch, lot, oil, substance }.Count(o => result.GetResult(o) is not null);
            if (named != 1)
            {
                result.AddError("Name one thing to begin with: --batch, --lot, --oil or --substance.");
            }

            if (result.GetResult(into) is not null && result.GetResult(hazard) is null)
            {
                result.AddError("Say what the danger is: --hazard \"en: The vessel can crack and hot wax can run out.\"");
            }
        });
        return command;
    }
}
