using System.CommandLine;
using Chandlery.Register;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery register rebuild</c>: what is searched, made anew from what is signed.</summary>
internal static class RegisterRebuildCommand
{
    public static Command Build()
    {
        Argument<string> path = RegisterCommand.PathArgument();
        var command = new Command(
            "rebuild",
            "Make everything that is searched anew from what is signed, when 'register verify' or 'register find' say that it differs. Entries and their hashes stay as they are."
        )
        {
            path,
        };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    RegisterPlace place = RegisterPlace.Named(parse.GetValue(path)!);
                    if (!place.Exists)
                    {
                        place.OpenToRead().Dispose();
                    }

                    using RegisterBook book = place.Open();
                    IReadOnlyList<long> damaged = book.Rebuild();
                    foreach (long number in damaged)
                    {
                        session.Complain($"Entry {number} is damaged and cannot be read, so it is found by nothing: look in a backup.");
                    }

                    session.Output.WriteLine($"What is searched was made anew for {book.Head().Number - damaged.Count} entries.");
                    return damaged.Count > 0 ? ExitCode.StopsSale : ExitCode.Fine;
                }
            )
        );
        return command;
    }
}
