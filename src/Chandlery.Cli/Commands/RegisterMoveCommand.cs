using System.CommandLine;
using Chandlery.Register;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery register move</c>: from a file into a shared database, or back, with every hash.</summary>
internal static class RegisterMoveCommand
{
    public static Command Build()
    {
        var from = new Argument<string>("from") { Description = "The register to carry over: a folder, a file, or a connection string." };
        var to = new Argument<string>("to")
        {
            Description =
                "Where to: a file, or the connection string of an empty database. What stands there must be the beginning of the other.",
        };
        var command = new Command(
            "move",
            "Carry a register over from a file into a shared database, or back: every entry, text, document and hash. The old one stays as it is."
        )
        {
            from,
            to,
        };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    using RegisterBook source = RegisterPlace.Named(parse.GetValue(from)!).OpenToRead();
                    using RegisterBook target = RegisterPlace.Named(parse.GetValue(to)!).Open();
                    long carried = target.TakeOver(source);
                    (long last, string head) = target.Head();
                    session.Output.WriteLine(
                        $"{carried} entr{(carried == 1 ? "y" : "ies")} carried over; the register has {last} now. Head: {head}. Tell every bench where it is: 'sharedRegister' in maker.yaml."
                    );
                    return ExitCode.Fine;
                }
            )
        );
        return command;
    }
}
