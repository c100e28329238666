using System.Text.RegularExpressions;
using Chandlery.Files;

namespace Chandlery.Register;

/// <summary>Where a register is: a file, or a PostgreSQL database that several benches share.</summary>
public sealed partial record RegisterPlace
{
    private const string SharedWitness = "register.shared";
    private readonly string where;
    private readonly bool isShared;
    private readonly string? witness;

    private RegisterPlace(string where, bool isShared, string? witness) =>
        (this.where, this.isShared, this.witness) = (where, isShared, witness);

    /// <summary>Whether there is anything yet; a database that is named is taken to be there.</summary>
    public bool Exists => isShared || File.Exists(where);

    /// <summary>The register of a maker's folder: the database that its maker names, or else the file in it.</summary>
    /// <exception cref="IOException">The maker's file is wrong.</exception>
    public static RegisterPlace OfFolder(string folder) =>
        SharedRegister.In(folder) is { } connection
            ? Shared(connection, Witness.FileOf(Path.Combine(folder, SharedWitness)))
            : InFile(Path.Combine(folder, RegisterWriter.FileName));

    /// <summary>The register that a user names: by the maker's folder, by its file, or by a connection string.</summary>
    /// <exception cref="IOException">The maker's file is wrong.</exception>
    public static RegisterPlace Named(string text) =>
        ConnectionString().IsMatch(text) ? Shared(text, null)
        : Directory.Exists(text) ? OfFolder(text)
        : InFile(text);

    /// <summary>Opens the register for adding; makes it when there is none.</summary>
    /// <exception cref="IOException">It cannot be opened; the message says why.</exception>
    public RegisterBook Open() => isShared ? new RegisterBook(PostgresStore.Open(where, witness)) : RegisterFile.Open(where);

    /// <summary>Opens the register for reading.</summary>
    /// <exception cref="IOException">There is none, or it cannot be opened; the message says why.</exception>
    public RegisterBook OpenToRead() =>
        isShared ? new RegisterBook(PostgresStore.OpenToRead(where, witness)) : RegisterFile.OpenToRead(where);

    /// <summary>A database.</summary>
    /// <param name="connection">Its connection string.</param>
    /// <param name="witness">Where this bench keeps its witness; null for nowhere.</param>
    internal static RegisterPlace Shared(string connection, string? witness) => new(connection, true, witness);

    private static RegisterPlace InFile(string file) => new(file, false, null);

    [GeneratedRegex(@"(^|;)\s*host\s*=", RegexOptions.IgnoreCase)]
    private static partial Regex ConnectionString();
}
