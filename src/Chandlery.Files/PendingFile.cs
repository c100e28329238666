namespace Chandlery.Files;

/// <summary>A file that is ready to be written.</summary>
public sealed record PendingFile(string Name, byte[] Content)
{
    /// <summary>Writes the file into a folder and says where it lies.</summary>
    public void Write(string folder, TextWriter output) => output.WriteLine(WriteInto(folder));

    /// <summary>Writes the file into a folder.</summary>
    /// <returns>Where it lies.</returns>
    public string WriteInto(string folder)
    {
        string path = Path.Combine(folder, Name);
        AtomicFile.Write(path, Content);
        return path;
    }
}
