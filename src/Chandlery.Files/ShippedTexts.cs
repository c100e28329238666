using System.Collections;
using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using System.IO.Compression;
using System.Reflection;
using System.Text;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>
/// Texts that travel inside the program, by relative path. Each is read when it is first asked for: two dozen languages lie there,
/// and a run needs one or two.
/// </summary>
internal sealed class ShippedTexts : IParsedDictionary
{
    private const string Compressed = ".deflate";
    private const string Parsed = ".tree";

    private static readonly Assembly Home = typeof(ShippedTexts).Assembly;

    private readonly string prefix;
    private readonly Dictionary<string, string> resources;
    private readonly IReadOnlyDictionary<string, string> instead;
    private readonly ConcurrentDictionary<string, string> read;

    /// <summary>Finds the texts below a folder.</summary>
    /// <param name="prefix">The folder, with a slash at its end.</param>
    /// <param name="wanted">Which of them, by relative path.</param>
    /// <param name="instead">Texts that are used instead of the program's own, and others beside them.</param>
    public ShippedTexts(string prefix, Func<string, bool> wanted, IReadOnlyDictionary<string, string> instead)
    {
        this.prefix = prefix;
        this.instead = instead;
        resources = Home.GetManifestResourceNames()
            .Where(resource => !resource.EndsWith(Parsed, StringComparison.Ordinal))
            .Select(resource => (Resource: resource, Name: NameOf(resource)))
            .Where(r => r.Name.StartsWith(prefix, StringComparison.Ordinal) && wanted(r.Name[prefix.Length..]))
            .ToDictionary(r => r.Name[prefix.Length..], r => r.Resource, StringComparer.Ordinal);
        read = new ConcurrentDictionary<string, string>(instead, StringComparer.Ordinal);
        Keys = [.. resources.Keys.Union(instead.Keys)];
    }

    /// <inheritdoc/>
    public IEnumerable<string> Keys { get; }

    /// <inheritdoc/>
    public IEnumerable<string> Values => Keys.Select(k => this[k]);

    /// <inheritdoc/>
    public int Count => Keys.Count();

    /// <inheritdoc/>
    public string this[string key] => TryGetValue(key, out string? text) ? text : throw new KeyNotFoundException(key);

    /// <inheritdoc/>
    public bool ContainsKey(string key) => read.ContainsKey(key) || resources.ContainsKey(key);

    /// <inheritdoc/>
    public bool TryGetValue(string key, [MaybeNullWhen(false)] out string value)
    {
        value = null;
        if (!ContainsKey(key))
        {
            return false;
        }

        value = read.GetOrAdd(key, k => Read(resources[k]));
        return true;
    }

    /// <inheritdoc/>
    public YamlMap? Tree(string path, string file)
    {
        using Stream? stream = instead.ContainsKey(path) ? null : Home.GetManifestResourceStream(prefix + path + Parsed);
        return stream is null ? null : PackedTree.Read(Unpacked(stream), file);
    }

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<string, string>> GetEnumerator() => Keys.Select(k => KeyValuePair.Create(k, this[k])).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private static bool IsCompressed(string resource) => resource.EndsWith(Compressed, StringComparison.Ordinal);

    private static string NameOf(string resource)
    {
        string name = resource.Replace('\\', '/');
        return IsCompressed(name) ? name[..^Compressed.Length] : name;
    }

    private static string Read(string resource)
    {
        using Stream stream = Home.GetManifestResourceStream(resource)!;
        using Stream text = IsCompressed(resource) ? new DeflateStream(stream, CompressionMode.Decompress) : stream;
        using var reader = new StreamReader(text, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    private static byte[] Unpacked(Stream stream)
    {
        using var packed = new DeflateStream(stream, CompressionMode.Decompress);
        using var whole = new MemoryStream();
        packed.CopyTo(whole);
        return whole.ToArray();
    }
}
