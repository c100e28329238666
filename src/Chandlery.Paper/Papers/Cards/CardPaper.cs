using Chandlery.Core.Law;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Symbols;
using Chandlery.Paper.Templates;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.Cards;

/// <summary>A burn-safety card that goes with a candle, a page for each language of the label.</summary>
/// <param name="id">Short name of the paper.</param>
/// <param name="title">What people call it.</param>
/// <param name="choice">What the command line calls it among the cards.</param>
/// <param name="about">Its size and what it is for.</param>
public abstract class CardPaper(string id, string title, string choice, string about) : PaperKind(id, title)
{
    /// <summary>What the command line calls it among the cards.</summary>
    public string Choice => choice;

    /// <summary>Its size and what it is for.</summary>
    public string About => about;

    /// <summary>What its template may use, in one language.</summary>
    internal abstract ITemplateView View(CardFacts facts);

    /// <inheritdoc/>
    protected override Language LanguageOf(PaperRequest request, int page) => request.Assessment.Languages[page];

    /// <inheritdoc/>
    protected override PaperOutcome Make(PaperRequest request, Problems problems)
    {
        var pages = new List<Scene>();
        string title = "";
        foreach (Language language in request.Assessment.Languages)
        {
            var facts = new CardFacts(request.Assessment, language, request.Lawbook.Burning);
            PaperShop shop = request.Shop with
            {
                Symbols = HourDial.On(request.Shop.Symbols, facts.LongestBurnHours),
                Breaks = language.Breaks,
            };
            ITemplateView view = View(facts);
            if (shop.Read(view, problems) is not { } document || CardFitter.Fit(document, view.Template, shop, problems) is not { } page)
            {
                return MissingPaper.Because(problems, isDue: true);
            }

            title = title.Length == 0 ? document.Title : title;
            pages.Add(page);
        }

        return new MadePaper(new PaperDocument(title, request.Assessment.Languages[0].Code, pages), []);
    }
}
