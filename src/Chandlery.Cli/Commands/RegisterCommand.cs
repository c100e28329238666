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
        command.Add(RegisterFindCommand.Build());
        command.Add(BuildVerify());
        command.Add(BuildBackup());
        command.Add(RegisterRebuildCommand.Build());
        command.Add(RegisterMoveCommand.Build());
        command.Add(RegisterDocumentCommand.Build());
        return command;
    }

    /// <summary>The register that a command is about.</summary>
    public static Argument<string> PathArgument() =>
        new("folder") { Description = "The maker's folder, the register's file, or the connection string of a shared one." };

    private static Option<string?> FileOption() =>
        new("--register")
        {
            Description =
                $"The register's file, or the connection string of a shared one. Default: what the maker names, or else {RegisterWriter.FileName} in the maker's folder.",
        };

    private static Command BuildAdd(PaperList papers)
    {
        var options = new CommonOptions();
        var register = FileOption();
        var documents = new Option<string[]>("--documents")
        {
            Description = $"The issued files, such as {PaperList.Called(papers.All)}. Their hashes are kept.",
            AllowMultipleArgumentsPerToken = true,
        };
        var keep = new Option<bool>("--keep")
        {
            Description =
                "Keep the documents themselves in the register too, not only their hashes: 'register document' takes them out again.",
        };
        var by = new Option<string>("--by") { Description = "Who issues them.", Required = true };
        var command = new Command("add", "Enter a batch or candle with the documents issued for it.");
        options.AddTo(command);
        command.Add(documents);
        command.Add(keep);
        command.Add(by);
        Option<bool> json = JsonOption.Of("register add");
        command.Add(register);
        command.Add(json);
        command.SetAction(parse =>
            Session.Run(
                parse,
                options,
                (session, assessments) =>
                {
                    List<(string, byte[])> files =
                    [
                        .. (parse.GetValue(documents) ?? []).Select(d => (Path.GetFileName(d), File.ReadAllBytes(d))),
                    ];
                    var issue = new RegisterIssue(files, parse.GetValue(keep), parse.GetValue(by)!);
                    return Add(session, assessments, issue, parse.GetValue(register), parse.GetValue(json));
                }
            )
        );
        return command;
    }

    private static int Add(Session session, IReadOnlyList<Assessment> assessments, RegisterIssue issue, string? register, bool json)
    {
        var problems = new Problems();
        DeclarationFolder folder = session.Declarations;
        List<(RegisterContent Content, IReadOnlyDictionary<string, string> Texts)> contents =
        [
            .. assessments.Select(a => RegisterWriter.Content(a, folder.Root, folder.Catalogue, issue.Documents, problems, issue.Keeps)),
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

        using RegisterBook book = (register is null ? RegisterPlace.OfFolder(folder.Root) : RegisterPlace.Named(register)).Open();
        var added = new List<AddedAnswer>();
        foreach ((RegisterContent content, IReadOnlyDictionary<string, string> texts) in contents)
        {
            List<string> doubts = [.. book.Doubts(content)];
            foreach (string doubt in doubts)
            {
                session.Complain(TextTable.Harmless($"Look: {doubt}."));
            }

            RegisterEntry entry = book.Add(
                content,
                texts,
                issue.By,
                DateTimeOffset.UtcNow,
                issue.Keeps ? RegisterWriter.Kept(issue.Documents) : null
            );
            added.Add(new AddedAnswer(entry.Number, content.Batch, content.Candle, content.Edition, entry.Hash, doubts));
            if (!json)
            {
                session.Output.WriteLine(
                    TextTable.Harmless($"{entry.Number}: {content.Batch}, {content.Candle}, {content.Edition}; {entry.Hash}")
                );
            }
        }

        if (json)
        {
            session.Output.WriteLine(JsonSerializer.Serialize([.. added], AnswerJson.Plain.AddedAnswerArray));
        }

        return ExitCode.Fine;
    }

    // What a damaged register of a million entries says would fill the memory of whoever reads the answer.
    private const int MostInAnswer = 1000;

    private static Command BuildVerify()
    {
        var path = PathArgument();
        Option<bool> json = JsonOption.Of("register verify");
        var command = new Command("verify", "Check that no entry was changed or removed.") { path, json };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    using RegisterBook book = RegisterPlace.Named(parse.GetValue(path)!).OpenToRead();
                    int wrong = 0;
                    var first = new List<string>();
                    (long count, string head) = book.Head();
                    book.Verify(
                        what =>
                        {
                            wrong++;
                            session.Complain(TextTable.Harmless(what));
                            if (first.Count < MostInAnswer)
                            {
                                first.Add(what);
                            }
                        },
                        reached => session.Progress.Tell(reached, count)
                    );
                    session.Progress.Clear();
                    (count, head) = book.Head();
                    if (parse.GetValue(json))
                    {
                        session.Output.WriteLine(
                            JsonSerializer.Serialize(new RegisterAnswer(wrong == 0, count, head, first), AnswerJson.Plain.RegisterAnswer)
                        );
                        return wrong > 0 ? ExitCode.StopsSale : ExitCode.Fine;
                    }

                    session.Output.WriteLine(
                        wrong > 0 ? "The register was tampered with or damaged."
                        : count == 0 ? "The register is empty."
                        : $"{count} entries hold together. Head: {head}. {Witnessed(book.WitnessFile)}"
                    );
                    return wrong > 0 ? ExitCode.StopsSale : ExitCode.Fine;
                }
            )
        );
        return command;
    }

    private static string Witnessed(string? file) =>
        file is null
            ? "No witness is kept beside a register that is named by its connection string: keep this line."
            : $"The witness file {Path.GetFileName(file)} names the last entry of this bench too; keep this line elsewhere, for whoever can write both can cut both.";

    private static Command BuildBackup()
    {
        var path = PathArgument();
        var target = new Argument<string>("copy") { Description = "File to write the copy to." };
        var command = new Command("backup", "Copy the register into a file, whole and consistent, even while it is in use.")
        {
            path,
            target,
        };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    using RegisterBook book = RegisterPlace.Named(parse.GetValue(path)!).OpenToRead();
                    book.BackUp(parse.GetValue(target)!);
                    session.Output.WriteLine(parse.GetValue(target)!);
                    return ExitCode.Fine;
                }
            )
        );
        return command;
    }
}
