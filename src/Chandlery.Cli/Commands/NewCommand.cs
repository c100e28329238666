using System.CommandLine;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery new</c>: a maker's folder with commented examples.</summary>
internal static class NewCommand
{
    public static Command Build()
    {
        var path = new Argument<string>("folder") { Description = "The folder to make." };
        var command = new Command("new", "Make a maker's folder with commented examples to replace by your own.") { path };
        command.SetAction(parse => Session.Guard(parse, session => Run(session, parse.GetValue(path)!)));
        return command;
    }

    private static int Run(Session session, string folder)
    {
        var problems = new Problems();
        IReadOnlyDictionary<string, string> files = ShippedFiles.Starter();
        foreach (string name in files.Keys.Where(n => File.Exists(Path.Combine(folder, n))))
        {
            problems.Add(new TextPlace(Path.Combine(folder, name), 0, 0), "The file exists already.", "Name another folder.");
        }

        if (!problems.None)
        {
            return session.Report(problems.Found);
        }

        foreach ((string name, string text) in files.OrderBy(f => f.Key, StringComparer.Ordinal))
        {
            string target = Path.Combine(folder, name);
            AtomicFile.Write(target, text);
            session.Output.WriteLine(target);
        }

        session.Output.WriteLine(
            $"Next: replace the examples by your own, then 'chandlery assess {folder}' or 'chandlery workbench {folder}'."
        );
        return ExitCode.Fine;
    }
}
