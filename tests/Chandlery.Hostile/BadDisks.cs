using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;

namespace Chandlery.Hostile;

/// <summary>
/// Gives every writing command a disk that is read-only, too small, or full with the last run's files on it: it must say so in
/// plain words, exit with 2, and leave whole files or none. The disks are small file systems in memory, mounted in a name space
/// of their own (Linux: unshare, mount), so that neither root's powers nor the machine's disk play a part.
/// </summary>
public static class BadDisks
{
    private const int BadInput = 2;

    // From less than one file to most of a dossier.
    private static readonly int[] SmallKilobytes = [8, 48, 160];

    /// <summary>Runs all of it; the result lists what went wrong.</summary>
    /// <param name="program">Path of chandlery.dll.</param>
    /// <param name="only">Names of the commands to try; empty for all.</param>
    public static IReadOnlyList<string> Run(string program, params string[] only)
    {
        var found = new List<string>();
        string work = Directory.CreateTempSubdirectory("chandlery-disk-").FullName;
        string disk = Directory.CreateDirectory(Path.Combine(work, "disk")).FullName;
        foreach (string[] command in WritingCommands.Into(disk).Where(c => only.Length == 0 || only.Contains(c[0])))
        {
            found.AddRange(ReadOnly(work, disk, program, command));
            found.AddRange(SmallKilobytes.SelectMany(size => TooSmall(work, disk, program, command, size)));
            if (command[0] != "new")
            {
                found.AddRange(FullOfOldFiles(work, disk, program, command));
            }
        }

        Directory.Delete(work, recursive: true);
        return found;
    }

    private static IEnumerable<string> ReadOnly(string work, string disk, string program, string[] command)
    {
        Outcome outcome = Try(work, $"mount -t tmpfs -o ro none '{disk}'", disk, program, command);
        return outcome.Complaints($"{command[0]} on a read-only disk", mustFail: true);
    }

    private static IEnumerable<string> TooSmall(string work, string disk, string program, string[] command, int kilobytes)
    {
        string size = kilobytes.ToString(CultureInfo.InvariantCulture);
        Outcome outcome = Try(work, $"mount -t tmpfs -o size={size}k none '{disk}'", disk, program, command);
        string what = $"{command[0]} on {size} kB";
        return
        [
            .. outcome.Complaints(what, mustFail: false),
            .. WritingCommands.Halves(outcome.Left).Select(f => $"{what}: {f} is cut off"),
        ];
    }

    // The first run has room; then the disk is filled to the last byte and the command is run again.
    private static IEnumerable<string> FullOfOldFiles(string work, string disk, string program, string[] command)
    {
        string before = Path.Combine(work, "before");
        Empty(before);
        string setUp =
            $"mount -t tmpfs -o size=64m none '{disk}' && dotnet {Quoted([program, .. command])} >/dev/null 2>&1; cp -a '{disk}/.' '{before}'; "
            + $"dd if=/dev/zero of='{disk}/filler' bs=4k 2>/dev/null; true";
        Outcome outcome = Try(work, setUp, disk, program, command);
        string what = $"{command[0]} on a full disk";
        List<string> lost =
        [
            .. Directory
                .GetFiles(before, "*", SearchOption.AllDirectories)
                .Select(f => Path.GetRelativePath(before, f))
                .Where(f => !SameBytes(Path.Combine(before, f), Path.Combine(outcome.Left, f)))
                .Select(f => $"{what}: the old {f} is not what it was"),
        ];
        return [.. outcome.Complaints(what, mustFail: true), .. lost];
    }

    private static bool SameBytes(string old, string now) =>
        File.Exists(now) && SHA256.HashData(File.ReadAllBytes(old)).AsSpan().SequenceEqual(SHA256.HashData(File.ReadAllBytes(now)));

    private static Outcome Try(string work, string setUp, string disk, string program, string[] command)
    {
        string left = Path.Combine(work, "left");
        Empty(left);
        string script = $"{setUp} || exit 99; dotnet {Quoted([program, .. command])}; code=$?; cp -a '{disk}/.' '{left}'; exit $code";
        using Process process = Process.Start(
            new ProcessStartInfo("unshare", ["--user", "--map-root-user", "--mount", "sh", "-c", script])
            {
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            }
        )!;
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        string errors = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return new Outcome(process.ExitCode, output.Result, errors, left);
    }

    private static void Empty(string folder)
    {
        if (Directory.Exists(folder))
        {
            Directory.Delete(folder, recursive: true);
        }

        Directory.CreateDirectory(folder);
    }

    private static string Quoted(IEnumerable<string> words) => string.Join(' ', words.Select(w => $"'{w}'"));

    private sealed record Outcome(int Code, string Output, string Errors, string Left)
    {
        public IEnumerable<string> Complaints(string what, bool mustFail)
        {
            if (Errors.Contains("   at ", StringComparison.Ordinal) || Errors.Contains("Unhandled", StringComparison.Ordinal))
            {
                yield return $"{what}: a stack trace: {Errors}";
            }

            if (mustFail ? Code != BadInput : Code is not (0 or 1 or BadInput))
            {
                yield return $"{what}: exit code {Code}: {Errors}";
            }

            if (Code == BadInput && Errors.Trim().Length == 0)
            {
                yield return $"{what}: failed without a word";
            }
        }
    }
}
