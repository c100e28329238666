using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Files;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law;

/// <summary>Law that is read when it is first asked for, by several threads at once.</summary>
public sealed class ShelfTests
{
    // Nobody has translated its sentences yet.
    private const string Polish = "languages/pl/safety-data-sheet.yaml";

    // A translation of a sentence of an edition: reading these words reads the editions.
    private static readonly Dictionary<string, string> Texts = new(ShippedFiles.Data(null, new Problems()).ToDictionary())
    {
        [Polish] = ShippedFiles.Data(null, new Problems())[Polish].TrimEnd() + "\nsentences:\n  candleTestsUs: \"Zob. {clause}.\"\n",
    };

    [Fact]
    public async Task Words_and_editions_may_be_asked_for_at_once()
    {
        for (int i = 0; i < 40; i++)
        {
            Lawbook lawbook = LawReader.ReadWhenAsked(Texts, PaperList.Own.Ids, new Problems())!;
            using var start = new Barrier(2);
            Task words = Asking(start, () => Assert.Equal("Zob. {clause}.", lawbook.SheetWords.Find("pl")!.Sentences["candleTestsUs"]));
            Task editions = Asking(start, () => Assert.NotEmpty(lawbook.Editions.ToArray()));
            await Task.WhenAll(words, editions).WaitAsync(TimeSpan.FromSeconds(30));
        }
    }

    private static Task Asking(Barrier start, Action ask) =>
        Task.Factory.StartNew(
            () =>
            {
                start.SignalAndWait();
                ask();
            },
            CancellationToken.None,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default
        );
}
