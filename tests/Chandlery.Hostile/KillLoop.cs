using System.Diagnostics;

namespace Chandlery.Hostile;

/// <summary>Kills every writing command in the middle, again and again, and looks at what it left: whole files or none.</summary>
public static class KillLoop
{
    /// <summary>Runs the rounds; the result lists what was found half-written.</summary>
    /// <param name="program">Path of chandlery.dll.</param>
    /// <param name="rounds">How often each command is killed.</param>
    public static IReadOnlyList<string> Run(string program, int rounds)
    {
        string folder = Directory.CreateTempSubdirectory("chandlery-kill-").FullName;
        string created = Path.Combine(folder, "new");
        var random = new Random(11);
        var found = new List<string>();
        foreach (string[] command in WritingCommands.Into(folder))
        {
            for (int round = 0; round < rounds; round++)
            {
                using Process process = Process.Start(
                    new ProcessStartInfo("dotnet", [program, .. command]) { RedirectStandardOutput = true, RedirectStandardError = true }
                )!;
                Thread.Sleep(random.Next(120, 1100));
                process.Kill(entireProcessTree: true);
                process.WaitForExit();
                found.AddRange(WritingCommands.Halves(folder).Select(f => $"{command[0]}, round {round}: {f}"));
                if (command[0] == "new" && Directory.Exists(created))
                {
                    Directory.Delete(created, recursive: true);
                }
            }
        }

        string register = Path.Combine(folder, WritingCommands.Register);
        if (File.Exists(register))
        {
            using Process verify = Process.Start(
                new ProcessStartInfo("dotnet", [program, "register", "verify", register])
                {
                    RedirectStandardOutput = true,
                    RedirectStandardError = true,
                }
            )!;
            string said = verify.StandardOutput.ReadToEnd() + verify.StandardError.ReadToEnd();
            verify.WaitForExit();
            if (verify.ExitCode != 0 && !said.Contains("is no register", StringComparison.Ordinal))
            {
                found.Add(said);
            }
        }

        Directory.Delete(folder, recursive: true);
        return found;
    }
}
