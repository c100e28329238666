using System.CommandLine;
using System.Reflection;
using System.Text.Json;
using Chandlery.Cli.Answers;
using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery version</c>: the program and the editions of the law that it carries.</summary>
internal static class VersionCommand
{
    public static Command Build()
    {
        var full = new Option<bool>("--full") { Description = "Sources, and what each edition leaves to others." };
        var memory = new Option<bool>("--memory")
        {
            Description = "Every row of law, text and data that still stands from memory, with its file, line and reason.",
        };
        Option<bool> json = JsonOption.Of("version");
        var command = new Command(
            "version",
            "The program's version, and the editions of the law with the day their sources were looked up."
        )
        {
            full,
            memory,
            json,
        };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                    parse.GetValue(memory)
                        ? FromMemory(session, parse.GetValue(json))
                        : Run(session, parse.GetValue(full), parse.GetValue(json))
            )
        );
        return command;
    }

    private static int Run(Session session, bool full, bool json)
    {
        var problems = new Problems();
        if (ShippedLaw.Open(null, problems) is not { } lawbook)
        {
            return session.Report(problems.Found);
        }

        string version = typeof(VersionCommand)
            .Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!
            .InformationalVersion.Split('+')[0];
        if (json)
        {
            var answer = new VersionAnswer(version, [.. lawbook.Editions.Select(Answer)]);
            session.Output.WriteLine(JsonSerializer.Serialize(answer, AnswerJson.Plain.VersionAnswer));
            return ExitCode.Fine;
        }

        session.Output.WriteLine($"Chandlery {version}");
        foreach (Edition edition in lawbook.Editions)
        {
            session.Output.WriteLine($"{edition.Id}: {edition.Name}; sources looked up {edition.LookedUp:yyyy-MM-dd}");
            if (full)
            {
                Print(session, "from", edition.Sources);
                Print(session, "covers", edition.Covers);
                Print(session, "leaves to others", edition.DoesNotCover);
                Print(session, "changes", [.. edition.Amendments.Select(Words)]);
            }
        }

        return ExitCode.Fine;
    }

    private static EditionAnswer Answer(Edition edition) =>
        new(
            edition.Id,
            edition.Name,
            IsoDay.Plain(edition.LookedUp),
            edition.Sources,
            edition.Covers,
            edition.DoesNotCover,
            [.. edition.Amendments.Select(Words)]
        );

    private static int FromMemory(Session session, bool json)
    {
        var problems = new Problems();
        IReadOnlyDictionary<string, string> texts = ShippedFiles.Data(null, problems);
        if (!problems.None)
        {
            return session.Report(problems.Found);
        }

        MemoryReport[] rows =
        [
            .. DataRowFinder
                .Find(texts)
                .Where(r => r.Standing == Standing.FromMemory)
                .OrderByDescending(r => r.IsLaw)
                .Select(r => new MemoryReport(r.Folder, r.IsLaw, r.Place.File, r.Place.Line, r.Name, r.Says)),
        ];
        if (json)
        {
            session.Output.WriteLine(JsonSerializer.Serialize(rows, MemoryJson.Default.MemoryReportArray));
            return ExitCode.Fine;
        }

        foreach (IGrouping<string, MemoryReport> group in rows.GroupBy(r => r.Edition))
        {
            session.Output.WriteLine($"{group.Key}: {group.Count()} from memory");
            foreach (MemoryReport row in group)
            {
                session.Output.WriteLine($"    {row.File}:{row.Line}: {row.Row}: {row.Reason}");
            }
        }

        return ExitCode.Fine;
    }

    private static string Words(Amendment amendment)
    {
        string stock = amendment.InForce.ExistingFrom is { } day ? $" (what was on the market before: from {day:yyyy-MM-dd})" : "";
        return $"from {amendment.InForce.From:yyyy-MM-dd}{stock}: {amendment.Says} [{amendment.Parts}; {amendment.Clause}]";
    }

    private static void Print(Session session, string head, IReadOnlyList<string> lines)
    {
        foreach (string line in lines)
        {
            session.Output.WriteLine($"    {head}: {line}");
        }
    }
}
