using System.CommandLine;
using System.Diagnostics;
using Chandlery.Paper.Papers;
using Chandlery.Workbench;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery</c> alone, and <c>chandlery workbench</c>: the local page.</summary>
internal static class WorkbenchCommand
{
    public static Command Build()
    {
        var path = new Argument<string>("folder")
        {
            Description = "The maker's folder. Default: the present one.",
            DefaultValueFactory = _ => ".",
        };
        var port = new Option<int>("--port")
        {
            Description = "Port on this machine, 1024 to 65535. Default: a free one.",
            CustomParser = result =>
                result.Tokens[0].Value == "0"
                    ? 0
                    : Numbers.Whole("--port", 1024, 65_535, "--port must be between 1024 and 65535; those below are the system's own.")(
                        result
                    ),
            DefaultValueFactory = _ => 0,
        };
        var noBrowser = new Option<bool>("--no-browser") { Description = "Only print the address." };
        var command = new Command(
            "workbench",
            "Open the local page: change a blend and watch label and limits change. Only this machine can reach it, and only with the key in the address; a phone only once you let it in on the page."
        )
        {
            path,
            port,
            noBrowser,
        };
        command.SetAction(parse => Run(parse, parse.GetValue(path)!, parse.GetValue(port), !parse.GetValue(noBrowser)));
        return command;
    }

    /// <summary>Starts the page and waits until the user stops it.</summary>
    public static async Task<int> Run(ParseResult parse, string folder, int port, bool browser)
    {
        var session = Session.Of(parse);
        TextWriter output = parse.InvocationConfiguration.Output;
        var problems = new Problems();
        if (Workroom.Open(folder, PaperList.Own, PdfWorker.Parse, problems) is not { } room)
        {
            return session.Report(problems.Found);
        }

        try
        {
            await using WorkbenchServer server = await WorkbenchServer.Start(room, port);
            await output.WriteLineAsync(server.WayIn);
            await output.WriteLineAsync("Stop with Ctrl+C.");
            await output.FlushAsync();
            if (browser)
            {
                OpenBrowser(server.WayInForOnce());
            }

            await server.WaitForShutdown();
            return ExitCode.Fine;
        }
        catch (IOException error)
        {
            session.Complain(error.Message);
            return ExitCode.BadInput;
        }
    }

    // A machine without a browser still has the printed address.
    private static void OpenBrowser(string address)
    {
        try
        {
            Process.Start(new ProcessStartInfo(address) { UseShellExecute = true })?.Dispose();
        }
        catch (Exception error)
            when (error is System.ComponentModel.Win32Exception or InvalidOperationException or PlatformNotSupportedException)
        {
            // Nothing to do: the address is on the terminal.
        }
    }
}
