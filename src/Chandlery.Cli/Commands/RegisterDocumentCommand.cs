using System.CommandLine;
using Chandlery.Register;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery register document</c>: a document or declaration as it was, byte for byte.</summary>
internal static class RegisterDocumentCommand
{
    public static Command Build()
    {
        Argument<string> path = RegisterCommand.PathArgument();
        var hash = new Argument<string>("hash") { Description = "Its hash (SHA-256), or the first eight digits at least." };
        var output = new Option<string>("--out") { Description = "File to write; - sends it to the standard output.", Required = true };
        var command = new Command(
            "document",
            "Take a document or declaration out of the register, byte for byte as it was put in ('register add --keep')."
        )
        {
            path,
            hash,
            output,
        };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    using RegisterBook register = RegisterPlace.Named(parse.GetValue(path)!).OpenToRead();
                    session.WriteFile(parse.GetValue(output)!, register.Document(parse.GetValue(hash)!));
                    return ExitCode.Fine;
                }
            )
        );
        return command;
    }
}
