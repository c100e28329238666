namespace Chandlery.Register;

/// <summary>Where a register is.</summary>
public sealed record RegisterPlace
{
    private RegisterPlace(string file) => File = file;

    /// <summary>The register's file.</summary>
    public string File { get; }

    /// <summary>Whether there is anything yet.</summary>
    public bool Exists => System.IO.File.Exists(File);

    /// <summary>The register of a maker's folder.</summary>
    public static RegisterPlace OfFolder(string folder) => new(Path.Combine(folder, RegisterWriter.FileName));

    /// <summary>The register that a user names: by the maker's folder, or by its file.</summary>
    public static RegisterPlace Named(string text) => Directory.Exists(text) ? OfFolder(text) : new RegisterPlace(text);

    /// <summary>Opens the register for adding; makes it when there is none.</summary>
    /// <exception cref="IOException">It cannot be opened; the message says why.</exception>
    public RegisterBook Open() => RegisterFile.Open(File);

    /// <summary>Opens the register for reading.</summary>
    /// <exception cref="IOException">There is none, or it cannot be opened; the message says why.</exception>
    public RegisterBook OpenToRead() => RegisterFile.OpenToRead(File);
}
