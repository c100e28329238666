using System.Security.Cryptography;
using System.Text;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>
/// The statements are the law's texts, letter by letter. <c>StatementHashes.txt</c> has the first eight figures of the SHA-256 of each
/// text, made from a public copy of the consolidated act and not from the data.
/// </summary>
public sealed class StatementHashTests
{
    private static readonly Dictionary<string, Dictionary<string, string>> Hashes = Read();

    /// <summary>All languages of the file.</summary>
    public static TheoryData<string> Languages() => [.. Hashes.Keys.Order(StringComparer.Ordinal)];

    [Outside("Regulation (EC) No 1272/2008, consolidated text of 1 September 2025, Annexes II, III and IV Part 2, in each language")]
    [Theory]
    [MemberData(nameof(Languages))]
    public void Statements_are_the_texts_of_the_act(string code)
    {
        Language language = TestLaw.Lawbook.FindLanguage(code)!;
        Assert.Empty(
            Hashes[code]
                .Where(h => Hash(language.Official.GetValueOrDefault(StatementCode.Of(h.Key)) ?? "") != h.Value)
                .Select(h => $"{code} {h.Key}")
        );
    }

    [Fact]
    public void The_file_has_every_language_and_most_statements()
    {
        Assert.Equal(
            TestLaw.Lawbook.Languages.Where(l => l.Official.Count > 0).Select(l => l.Code),
            Hashes.Keys.Order(StringComparer.Ordinal)
        );
        Assert.All(Hashes.Values, texts => Assert.InRange(texts.Count, 100, 200));
    }

    private static string Hash(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..8];

    private static Dictionary<string, Dictionary<string, string>> Read() =>
        File.ReadLines(Path.Combine(TestLaw.Repository, "tests", "Chandlery.Tests", "Law", "StatementHashes.txt"))
            .Select(line => line.Split(": ", 2))
            .GroupBy(parts => parts[0])
            .ToDictionary(
                group => group.Key,
                group =>
                    group.SelectMany(parts => parts[1].Split(", ")).Select(row => row.Split(' ')).ToDictionary(row => row[0], row => row[1])
            );
}
