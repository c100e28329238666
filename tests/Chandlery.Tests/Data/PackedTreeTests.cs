using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Tests.Data;

/// <summary>The law as it travels, parsed, beside what the same texts say when they are parsed here.</summary>
public sealed class PackedTreeTests
{
    private static readonly IReadOnlyDictionary<string, string> Shipped = ShippedFiles.Data(null, new Problems());

    public static TheoryData<string> Files() =>
        [.. Shipped.Keys.Where(k => k.EndsWith(".yaml", StringComparison.Ordinal) && !k.StartsWith("stocks/", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_packed_tree_is_the_tree_of_its_text(string file)
    {
        YamlMap? packed = Assert.IsType<IParsedDictionary>(Shipped, exactMatch: false).Tree(file, file);
        Assert.NotNull(packed);
        Assert.Equal(Lines(YamlText.Read(Shipped[file], file, new Problems())!), Lines(packed));
    }

    [Fact]
    public void A_text_that_is_replaced_is_parsed_from_what_replaces_it()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "burning.yaml"), "other: 1");
            var texts = Assert.IsType<IParsedDictionary>(ShippedFiles.Data(folder, new Problems()), exactMatch: false);
            Assert.Null(texts.Tree("burning.yaml", "burning.yaml"));
            Assert.Equal("other", YamlText.Read(texts, "burning.yaml", "burning.yaml", new Problems())!.Entries.Single().Key);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static IEnumerable<string> Lines(YamlValue value) =>
        value switch
        {
            YamlMap map => map.Entries.SelectMany(e => Lines(e.Value).Prepend($"{e.KeyPlace} {e.Key}")).Prepend($"{map.Place} map"),
            YamlList list => list.Items.SelectMany(Lines).Prepend($"{list.Place} list of {list.Items.Count}"),
            YamlScalar scalar => [$"{scalar.Place} {scalar.Quoted} {scalar.Text}"],
            _ => throw new ArgumentOutOfRangeException(nameof(value)),
        };
}
