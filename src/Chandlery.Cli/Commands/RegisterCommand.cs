using System.CommandLine;
using System.Text.Json;
using Chandlery.Cli.Answers;
using Chandlery.Core.Assessed;
using Chandlery.Files;
using Chandlery.Paper.Papers;
using Chandlery.Register;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery register</c>: which batch got which label, from which declarations.</summary>
internal static class RegisterCommand
{
    public static Command Build(PaperList papers)
    {
        var command = new Command(
            "register",
            "The register of issued labels: which batch, from exactly which declarations, under which law, with which documents. It is only ever added to."
        );
        command.Add(BuildAdd(papers));
        command.Add(BuildFind());
        command.Add(BuildVerify());
        command.Add(BuildBackup());
        return command;
    }

    private static Option<string?> FileOption() =>
        new("--register") { Description = $"The register's file. Default: {RegisterWriter.FileName} in the maker's folder." };

    private static Command BuildAdd(PaperList papers)
    {
        var options = new CommonOptions();
        var register = FileOption();
        var documents = new Option<string[]>("--documents")
        {
            Description = $"The issued files, such as {PaperList.Called(papers.All)}. Their hashes are kept.",
            AllowMultipleArgumentsPerToken = true,
        };
        var by = new Option<string>("--by") { Description = "Who issues them.", Required = true };
        var command = new Command("add", "Enter a batch or candle with the documents issued for it.");
        options.AddTo(command);
        command.Add(documents);
        command.Add(by);
        command.Add(register);
        command.SetAction(parse =>
            Session.Run(
                parse,
                options,
                (session, assessments) =>
                    Add(session, assessments, parse.GetValue(documents) ?? [], parse.GetValue(by)!, parse.GetValue(register))
            )
        );
        return command;
    }

    private static int Add(Session session, IReadOnlyList<Assessment> assessments, string[] documents, string by, string? register)
    {
        var problems = new Problems();
        DeclarationFolder folder = session.Declarations;
        List<(string, byte[])> files = [.. documents.Select(d => (Path.GetFileName(d), File.ReadAllBytes(d)))];
        List<(RegisterContent Content, IReadOnlyDictionary<string, string> Texts)> contents =
        [
            .. assessments.Select(a => RegisterWriter.Content(a, folder.Root, folder.Catalogue, files, problems)),
        ];
        if (!problems.None)
        {
            return session.Report(problems.Found);
        }

        if (assessments.Any(a => a.StopsSale))
        {
            session.Complain(
                $"{string.Join(", ", assessments.Where(a => a.StopsSale).Select(a => a.Id).Distinct())}: something stops the sale (see 'assess'), so no label can have been issued lawfully; nothing was entered."
            );
            return ExitCode.StopsSale;
        }

        using RegisterFile file = RegisterFile.Open(register ?? Path.Combine(folder.Root, RegisterWriter.FileName));
        foreach ((RegisterContent content, IReadOnlyDictionary<string, string> texts) in contents)
        {
            foreach (string doubt in file.Doubts(content))
            {
                session.Complain($"Look: {doubt}.");
            }

            RegisterEntry entry = file.Add(content, texts, by, DateTimeOffset.UtcNow);
            session.Output.WriteLine($"{entry.Number}: {content.Batch}, {content.Candle}, {content.Edition}; {entry.Hash}");
        }

        return ExitCode.Fine;
    }

    private static Command BuildFind()
    {
        var path = new Argument<string>("folder") { Description = "The maker's folder, or the register's file." };
        var batch = new Option<string?>("--batch") { Description = "Batch code, or name of the batch's declaration." };
        var substance = new Option<string?>("--substance") { Description = "CAS number, or part of a name." };
        var oil = new Option<string?>("--oil") { Description = "Name of an oil's declaration, or part of its trade name." };
        var document = new Option<string?>("--document") { Description = "Part of the supplier document's reference." };
        var revised = new Option<string?>("--revised") { Description = "Revision date of the supplier's document, such as 2026-02-10." };
        var format = new Option<string>("--format")
        {
            Description = "table, csv or json. Default: table.",
            DefaultValueFactory = _ => "table",
        };
        format.AcceptOnlyFromAmong("table", "csv", "json");
        Option<bool> json = JsonOption.Of("register find");
        var output = new Option<string?>("--out") { Description = "File to write. Default: the terminal." };
        var command = new Command(
            "find",
            "Which labels are out there: with this oil revision, this substance, this batch. Without options: all entries."
        )
        {
            path,
            batch,
            substance,
            oil,
            document,
            revised,
            format,
            json,
            output,
        };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    using RegisterFile file = RegisterFile.OpenToRead(FileOf(parse.GetValue(path)!));
                    var query = new RegisterQuery(
                        parse.GetValue(batch),
                        parse.GetValue(substance),
                        parse.GetValue(oil),
                        parse.GetValue(document),
                        parse.GetValue(revised)
                    );
                    int damaged = 0;
                    IEnumerable<RegisterEntry> entries = file.Stream(
                        query,
                        number =>
                        {
                            damaged++;
                            session.Complain($"Entry {number} is damaged and was left out: 'register verify' says more.");
                        }
                    );
                    string shape = parse.GetValue(json) ? "json" : parse.GetValue(format)!;
                    if (parse.GetValue(output) is { } target)
                    {
                        var text = new StringWriter();
                        Write(entries, shape, text);
                        AtomicFile.Write(target, text.ToString());
                        session.Output.WriteLine(target);
                    }
                    else
                    {
                        Write(entries, shape, session.Output);
                    }

                    if (damaged > 0)
                    {
                        return ExitCode.StopsSale;
                    }

                    return ExitCode.Fine;
                }
            )
        );
        return command;
    }

    // An entry at a time: however many there are, none is kept but its line.
    private static void Write(IEnumerable<RegisterEntry> entries, string format, TextWriter output)
    {
        switch (format)
        {
            case "json":
                string before = "[";
                foreach (RegisterEntry entry in entries)
                {
                    output.Write(before);
                    output.Write(JsonSerializer.Serialize(entry, RegisterJson.Default.RegisterEntry));
                    before = ",";
                }

                output.Write(before == "[" ? "[]\n" : "]\n");
                break;
            case "csv":
                RegisterTable.Write(entries, output);
                break;
            default:
                Table(entries, output);
                break;
        }
    }

    private static void Table(IEnumerable<RegisterEntry> entries, TextWriter output)
    {
        var table = new TextTable("no.", "when (UTC)", "by", "batch", "candle", "law, day", "oils", "documents");
        int count = 0;
        foreach (RegisterEntry e in entries)
        {
            count++;
            table.Add(
                $"{e.Number}",
                e.At,
                e.By,
                e.Content.Batch,
                e.Content.Candle,
                $"{e.Content.Edition}, {e.Content.AsOf}",
                string.Join("; ", e.Content.Oils.Select(o => $"{o.Name} ({o.Document}, {o.Revised})")),
                string.Join(", ", e.Content.Documents.Select(d => d.Name))
            );
        }

        table.Write(output, AssessCommand.Width);
        output.Write($"{count} entr{(count == 1 ? "y" : "ies")}.\n");
    }

    private static Command BuildVerify()
    {
        var path = new Argument<string>("folder") { Description = "The maker's folder, or the register's file." };
        Option<bool> json = JsonOption.Of("register verify");
        var command = new Command("verify", "Check that no entry was changed or removed.") { path, json };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    using RegisterFile file = RegisterFile.OpenToRead(FileOf(parse.GetValue(path)!));
                    IReadOnlyList<string> wrong = file.Verify();
                    (long count, string head) = file.Head();
                    foreach (string what in wrong)
                    {
                        session.Complain(what);
                    }

                    if (parse.GetValue(json))
                    {
                        var answer = new RegisterAnswer(wrong.Count == 0, count, head, wrong);
                        session.Output.WriteLine(JsonSerializer.Serialize(answer, AnswerJson.Plain.RegisterAnswer));
                        return wrong.Count > 0 ? ExitCode.StopsSale : ExitCode.Fine;
                    }

                    session.Output.WriteLine(
                        wrong.Count > 0 ? "The register was tampered with or damaged."
                        : count == 0 ? "The register is empty."
                        : $"{count} entries hold together. Head: {head}. The witness file beside the register names it too; keep this line elsewhere, for whoever can write both files can cut both."
                    );
                    return wrong.Count > 0 ? ExitCode.StopsSale : ExitCode.Fine;
                }
            )
        );
        return command;
    }

    private static Command BuildBackup()
    {
        var path = new Argument<string>("folder") { Description = "The maker's folder, or the register's file." };
        var target = new Argument<string>("copy") { Description = "File to write the copy to." };
        var command = new Command("backup", "Copy the register, whole and consistent, even while it is in use.") { path, target };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    using RegisterFile file = RegisterFile.OpenToRead(FileOf(parse.GetValue(path)!));
                    file.BackUp(parse.GetValue(target)!);
                    session.Output.WriteLine(parse.GetValue(target)!);
                    return ExitCode.Fine;
                }
            )
        );
        return command;
    }

    private static string FileOf(string path) => Directory.Exists(path) ? Path.Combine(path, RegisterWriter.FileName) : path;
}
