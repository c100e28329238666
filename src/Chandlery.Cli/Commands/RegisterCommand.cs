using System.CommandLine;
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
        return command;
    }

    /// <summary>The register that a command is about.</summary>
    public static Argument<string> PathArgument() => new("folder") { Description = "The maker's folder, or the register's file." };

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

        using RegisterBook book = (register is null ? RegisterPlace.OfFolder(folder.Root) : RegisterPlace.Named(register)).Open();
        foreach ((RegisterContent content, IReadOnlyDictionary<string, string> texts) in contents)
        {
            foreach (string doubt in book.Doubts(content))
            {
                session.Complain(TextTable.Harmless($"Look: {doubt}."));
            }

            RegisterEntry entry = book.Add(content, texts, by, DateTimeOffset.UtcNow);
            session.Output.WriteLine(
                TextTable.Harmless($"{entry.Number}: {content.Batch}, {content.Candle}, {content.Edition}; {entry.Hash}")
            );
        }

        return ExitCode.Fine;
    }

    private static Command BuildVerify()
    {
        var path = PathArgument();
        var command = new Command("verify", "Check that no entry was changed or removed.") { path };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    using RegisterBook book = RegisterPlace.Named(parse.GetValue(path)!).OpenToRead();
                    int wrong = 0;
                    book.Verify(what =>
                    {
                        wrong++;
                        session.Complain(TextTable.Harmless(what));
                    });
                    (long count, string head) = book.Head();
                    session.Output.WriteLine(
                        wrong > 0 ? "The register was tampered with or damaged."
                        : count == 0 ? "The register is empty."
                        : $"{count} entries hold together. Head: {head}. The witness file beside the register names it too; keep this line elsewhere, for whoever can write both files can cut both."
                    );
                    return wrong > 0 ? ExitCode.StopsSale : ExitCode.Fine;
                }
            )
        );
        return command;
    }

    private static Command BuildBackup()
    {
        var path = PathArgument();
        var target = new Argument<string>("copy") { Description = "File to write the copy to." };
        var command = new Command("backup", "Copy the register, whole and consistent, even while it is in use.") { path, target };
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
