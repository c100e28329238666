using System.IO.Compression;
using System.Net.Http.Json;
using Chandlery.Tests.Support;
using Chandlery.Workbench;
using Chandlery.Yaml;

namespace Chandlery.Tests.Workbench;

/// <summary>What to mind before the papers of a recall go out is said in the language of the page that asks for them.</summary>
public sealed class RecallLanguageTests
{
    [Theory]
    [InlineData("en", "Whom to ask must be reached free of charge", "dune-reeds: no picture of the product is declared")]
    [InlineData("de", "Wen man fragt, der muss kostenlos erreichbar sein", "dune-reeds: Es ist kein Bild des Produkts angegeben")]
    [InlineData("fr", "joignable gratuitement", "aucune image du produit n’est déclarée")]
    [InlineData("es", "debe poder llegarse gratis", "no se declara ninguna imagen del producto")]
    [InlineData("xx", "Whom to ask must be reached free of charge", "dune-reeds: no picture")]
    public async Task It_is_said_in_the_language_of_the_page(string language, params string[] said)
    {
        using var folder = new MakersFolder();
        await using WorkbenchServer server = await WorkbenchServer.Start(Workroom.Open(folder.Path, new Problems())!, 0);
        using var client = new HttpClient { BaseAddress = new Uri(server.Address) };
        client.DefaultRequestHeaders.Add("X-Workbench", "1");
        await client.GetAsync(server.WayIn);
        HttpResponseMessage answer = await client.PostAsJsonAsync(
            "/api/recall",
            new
            {
                by = "batch",
                text = "DR-2611-01",
                hazards = new[] { "en: The bottle can leak." },
                language,
            }
        );
        answer.EnsureSuccessStatusCode();
        using var zip = new ZipArchive(await answer.Content.ReadAsStreamAsync());
        using var first = new StreamReader(zip.GetEntry("read-this-first.txt")!.Open());
        string text = await first.ReadToEndAsync();
        Assert.All(said, s => Assert.Contains(s, text, StringComparison.Ordinal));
        Assert.Equal(language is "en" or "xx", text.Contains("the danger is said in English", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("1")]
    [InlineData("Batch")]
    [InlineData("batch,lot")]
    [InlineData("")]
    public void Only_a_name_is_a_name_of_what_is_searched_by(string name) =>
        Assert.Null(EnumName.Find<Chandlery.Core.SafetyFiles.Recalls.RecallBy>(name));
}
