using System.Diagnostics;
using System.Reflection;
using System.Text;

namespace Chandlery.Hostile;

/// <summary>Kills every writing command in the middle, again and again, and looks at what it left: whole files or none.</summary>
public static class KillLoop
{
    /// <summary>Runs the rounds; the result lists what was found half-written.</summary>
    /// <param name="program">Path of chandlery.dll.</param>
    /// <param name="rounds">How often each command is killed.</param>
    public static IReadOnlyList<string> Run(string program, int rounds)
    {
        string root = typeof(KillLoop)
            .Assembly.GetCustomAttributes<AssemblyMetadataAttribute>()
            .Single(a => a.Key == "RepositoryFolder")
            .Value!;
        string demo = Path.Combine(root, "data", "demo");
        string bowl = Path.Combine(demo, "candles", "harbour-bowl.yaml");
        string folder = Directory.CreateTempSubdirectory("chandlery-kill-").FullName;
        string register = Path.Combine(folder, "register.sqlite");
        string Out(string name) => Path.Combine(folder, name);
        string[][] commands =
        [
            ["dossier", bowl, "--out", Out("dossier")],
            ["label", bowl, "--format", "pdf,png,svg", "--out", Out("label")],
            ["card", bowl, "--out", Out("card")],
            ["sheet", Path.Combine(demo, "candles", "fig-tin.yaml"), "--stock", "a4-3x4-circles-60", "--out", Out("sheet")],
            ["safety-sheet", bowl, "--out", Out("safety")],
            ["bench-sheet", bowl, "--out", Out("bench")],
            ["ceiling", bowl, "--plot", Out("plot.svg")],
            [
                "draft",
                Path.Combine(root, "tests", "Chandlery.Sheets", "pdf", "dune.own-lines-en.pdf"),
                "--out",
                Out("oil.yaml"),
                "--replace",
            ],
            ["export", demo, "--out", Out("candles.csv")],
            ["schemas", "--out", Out("schemas")],
            ["new", Out("new")],
            ["register", "add", bowl, "--by", "killed", "--register", register],
        ];
        var random = new Random(11);
        var found = new List<string>();
        foreach (string[] command in commands)
        {
            for (int round = 0; round < rounds; round++)
            {
                using Process process = Process.Start(
                    new ProcessStartInfo("dotnet", [program, .. command]) { RedirectStandardOutput = true, RedirectStandardError = true }
                )!;
                Thread.Sleep(random.Next(120, 1100));
                process.Kill(entireProcessTree: true);
                process.WaitForExit();
                found.AddRange(
                    Directory
                        .GetFiles(folder, "*", SearchOption.AllDirectories)
                        .Where(IsHalf)
                        .Select(f => $"{command[0]}, round {round}: {f}")
                );
                if (command[0] == "new" && Directory.Exists(Out("new")))
                {
                    Directory.Delete(Out("new"), recursive: true);
                }
            }
        }

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

    // Temporary files beside the target may stay behind; a file under its own name must be whole.
    private static bool IsHalf(string file)
    {
        if (file.EndsWith(".tmp", StringComparison.Ordinal))
        {
            return false;
        }

        byte[] bytes;
        try
        {
            bytes = File.ReadAllBytes(file);
        }
        catch (IOException)
        {
            return false;
        }

        string end = Encoding.Latin1.GetString(bytes.AsSpan(Math.Max(0, bytes.Length - 24))).TrimEnd();
        return Path.GetExtension(file) switch
        {
            ".pdf" => !end.EndsWith("%%EOF", StringComparison.Ordinal),
            ".png" => !end.Contains("IEND", StringComparison.Ordinal),
            ".svg" => !end.EndsWith("</svg>", StringComparison.Ordinal),
            ".json" => !end.EndsWith('}') && !end.EndsWith(']'),
            ".yaml" or ".csv" or ".txt" => bytes.Length == 0 || bytes[^1] != (byte)'\n',
            _ => false,
        };
    }
}
