using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Chandlery.Register;

/// <summary>The documents that a register keeps, each under the hash of its bytes.</summary>
/// <param name="store">The database.</param>
internal sealed partial class HeldDocuments(RegisterStore store)
{
    /// <summary>The table.</summary>
    public const string Table = "document";

    // Whether there is a table: a register of an older program, opened to read, has none.
    private readonly bool isThere = store.HasTable(Table);

    /// <summary>The bytes of a document, or of a declaration's text.</summary>
    /// <param name="hash">Their hash, or its beginning.</param>
    /// <exception cref="IOException">There is none of that hash, or several, or it was changed.</exception>
    public byte[] Find(string hash)
    {
        if (!Hash().IsMatch(hash))
        {
            throw new IOException($"'{hash}' is no hash: write its 64 digits (0 to 9, a to f), or the first eight at least.");
        }

        List<(string Sha256, bool IsDocument)> found = [.. Beginning("declaration", hash).Select(h => (h, false))];
        found.AddRange(isThere ? Beginning(Table, hash).Select(h => (h, true)) : []);
        return found switch
        {
            [] => throw new IOException($"{store.Name}: it keeps no document or declaration of the hash {hash}."),
            [var one] => Whole(one.Sha256, one.IsDocument),
            _ => throw new IOException($"{store.Name}: several hashes begin with {hash}: write more of it."),
        };
    }

    /// <summary>The bytes of a document; null when it is not kept.</summary>
    public byte[]? Bytes(string sha256) => isThere ? store.One($"SELECT bytes FROM {Table} WHERE sha256 = @p0", sha256) as byte[] : null;

    /// <summary>Whether a document is kept.</summary>
    public bool Has(string sha256) => isThere && store.One($"SELECT 1 FROM {Table} WHERE sha256 = @p0", sha256) is not null;

    /// <summary>The hashes under which stand other bytes, one document held at a time.</summary>
    public IEnumerable<string> Changed()
    {
        string last = "";
        while (
            isThere
            && store.Rows(
                row =>
                    (
                        Sha256: RegisterStore.Text(row, 0),
                        IsWhole: row.GetValue(1) is byte[] bytes && HashOf(bytes) == RegisterStore.Text(row, 0)
                    ),
                $"SELECT sha256, bytes FROM {Table} WHERE sha256 > @p0 ORDER BY sha256 LIMIT 1",
                last
            )
                is [var document]
        )
        {
            if (!document.IsWhole)
            {
                yield return document.Sha256;
            }

            last = document.Sha256;
        }
    }

    /// <summary>Hash of bytes, in hexadecimal.</summary>
    public static string HashOf(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private List<string> Beginning(string table, string hash) =>
        store.Rows(
            row => RegisterStore.Text(row, 0),
            $"SELECT sha256 FROM {table} WHERE sha256 >= @p0 AND sha256 < @p1 LIMIT 2",
            hash,
            hash + "g"
        );

    private byte[] Whole(string sha256, bool isDocument)
    {
        byte[] bytes = isDocument
            ? Bytes(sha256) ?? []
            : Encoding.UTF8.GetBytes(store.One("SELECT text FROM declaration WHERE sha256 = @p0", sha256) as string ?? "");
        return HashOf(bytes) == sha256
            ? bytes
            : throw new IOException($"{store.Name}: what stands under the hash {sha256} was changed; look in a backup.");
    }

    [GeneratedRegex("^[0-9a-f]{8,64}$")]
    private static partial Regex Hash();
}
