using Chandlery.Core.Declared;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Paper.Blocks;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Templates;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.Recalls;

/// <summary>Prints what a recall sends out: the notice, letters with it, and a card for the shelf.</summary>
/// <param name="shop">Templates and drawings.</param>
/// <param name="problems">Collects what is wrong with templates.</param>
public sealed class RecallDocuments(PaperShop shop, Problems problems)
{
    private const double LineSpacing = 1.3;
    private const double PictogramMm = 16;
    private const double StepMm = 0.05;
    private const string Picture = "picture";

    /// <summary>What the notices of a product show, the product itself or its label; null for nothing.</summary>
    public Scene? Pictured { get; init; }

    /// <summary>The notice alone; null with problems.</summary>
    public PaperDocument? Notice(NoticeText notice) =>
        Print(
            new RecallNoticeView
            {
                Title = notice.Title,
                Lang = notice.Language,
                Name = notice.Name,
                To = [],
                Subject = "",
                Intro = "",
                Parts = Parts(notice),
                Answer = "",
            }
        );

    /// <summary>The card for the shelf; null with problems.</summary>
    public PaperDocument? ShelfCard(NoticeText notice) =>
        Print(new ShelfCardView(notice.Title, notice.Language, notice.Name, Parts(notice)));

    /// <summary>The letter to a receiver who is known; null with problems.</summary>
    public PaperDocument? Letter(NoticeText notice, Dispatch dispatch, Receiver receiver, RecallWords words)
    {
        bool isShop = dispatch.ToWhom == ReceiverKind.Shop;
        string intro = NoticeText.Fill(
            words[isShop ? "shopLetterText" : "personLetterText"],
            ("pieces", $"{dispatch.Pieces}"),
            ("date", IsoDay.Plain(dispatch.On))
        );
        return Print(
            new RecallNoticeView
            {
                Title = notice.Title,
                Lang = notice.Language,
                Name = notice.Name,
                To = [receiver.Name, .. receiver.AddressLines],
                Subject = isShop ? words["shopLetterTitle"] : words["recallTitle"],
                Intro = intro,
                Parts = Parts(notice),
                Answer = isShop ? words["shopLetterAnswer"] : "",
            }
        );
    }

    // Whole on one page where it fits, since half a warning is none.
    private PaperDocument? Print(ITemplateView view) =>
        Read(view) is { } document
            ? PageFitter.FitOrCount(
                document,
                shop,
                LineSpacing,
                PictogramMm,
                StepMm,
                (number, count) => ManyPages.Line("", $"{number} / {count}")
            )
            : null;

    private MarkupDocument? Read(ITemplateView view) =>
        shop.Read(view, problems) is not { } document ? null
        : Pictured is null ? document
        : Depiction.In(document, new Dictionary<string, Scene> { [Picture] = Pictured });

    // The picture stands with the product, in the first part.
    private IReadOnlyList<NoticePartView> Parts(NoticeText notice) =>
        [.. notice.Parts.Select((p, i) => new NoticePartView(p.Heading, p.Texts, i == 0 && Pictured is not null ? Picture : ""))];
}
