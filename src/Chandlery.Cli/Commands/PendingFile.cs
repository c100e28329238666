using Chandlery.Files;

namespace Chandlery.Cli.Commands;

/// <summary>A file that is ready to be written.</summary>
internal sealed record PendingFile(string Name, byte[] Content)
{
    /// <summary>Writes the file into a folder and says where it lies.</summary>
    public void Write(string folder, TextWriter output)
    {
        string path = Path.Combine(folder, Name);
        AtomicFile.Write(path, Content);
        output.WriteLine(path);
    }
}
