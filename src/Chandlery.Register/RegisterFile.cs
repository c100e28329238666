using System.Security.Cryptography;
using System.Text;

namespace Chandlery.Register;

/// <summary>A register in a file.</summary>
public static class RegisterFile
{
    /// <summary>Opens the register for adding; makes it when there is none.</summary>
    /// <exception cref="IOException">The file cannot be written, is no register, or another process holds it for too long.</exception>
    public static RegisterBook Open(string path) => new(SqliteStore.Open(path));

    /// <summary>Opens the register for reading.</summary>
    /// <exception cref="IOException">There is no such file, or it is no register.</exception>
    public static RegisterBook OpenToRead(string path) => new(SqliteStore.OpenToRead(path));

    /// <summary>Hash of a text, in hexadecimal.</summary>
    public static string Sha256(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
