using System.CommandLine;
using Chandlery.Cli.Answers;
using Chandlery.Files;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery schemas</c>: what other programs need to read and write this one's files.</summary>
internal static class SchemasCommand
{
    public static Command Build()
    {
        var output = new Option<string>("--out")
        {
            Description = "Folder to write into. Default: schemas.",
            DefaultValueFactory = _ => "schemas",
        };
        var command = new Command(
            "schemas",
            "Write the JSON Schemas of declarations, assessments and answers, for editors and other programs."
        )
        {
            output,
        };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    foreach ((string name, string text) in AnswerSchemas.AndAllOthers())
                    {
                        string path = Path.Combine(parse.GetValue(output)!, name);
                        AtomicFile.Write(path, text);
                        session.Output.WriteLine(path);
                    }

                    return ExitCode.Fine;
                }
            )
        );
        return command;
    }
}
