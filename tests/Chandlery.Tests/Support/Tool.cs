using System.Diagnostics;

namespace Chandlery.Tests.Support;

/// <summary>Runs other programs on files in a folder that is deleted afterwards.</summary>
internal sealed class Tool : IDisposable
{
    /// <summary>The folder.</summary>
    public string Folder { get; } = Directory.CreateTempSubdirectory("chandlery-tool-").FullName;

    /// <summary>Writes a file into the folder.</summary>
    /// <returns>Its path.</returns>
    public string Write(string name, byte[] bytes)
    {
        string path = PathOf(name);
        File.WriteAllBytes(path, bytes);
        return path;
    }

    /// <summary>The path of a file in the folder.</summary>
    public string PathOf(string name) => Path.Combine(Folder, name);

    /// <summary>Runs a program in the folder; it must end well.</summary>
    /// <returns>What it said.</returns>
    public string Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Folder,
        };
        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{program} {string.Join(' ', arguments)}: {process.ExitCode}\n{output}\n{errors.Result}");
        return output + errors.Result;
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
