using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Files.Recalls;

/// <summary>Finds what a recall notice can show: the declared picture of the product, or else the front of its label.</summary>
/// <param name="ground">What the recall is made of.</param>
/// <param name="problems">Collects what is wrong with pictures.</param>
internal sealed class RecalledPictures(RecallGround ground, Problems problems)
{
    private const double WebDotsPerInch = 200;

    /// <summary>What is shown of a recalled product; null where there is neither.</summary>
    public RecalledPicture? Of(AffectedBatch affected)
    {
        if (affected.Candle.Picture is { } declared)
        {
            return PictureFiles.OpenWithFile(affected.Candle, problems) is { } opened
                ? new RecalledPicture(
                    opened.Scene,
                    $"{affected.Candle.Id}-picture{Path.GetExtension(declared.Name).ToLowerInvariant()}",
                    opened.File,
                    IsLabel: false
                )
                : null;
        }

        return Front(affected) is { } front
            ? new RecalledPicture(front, $"{affected.Candle.Id}-picture.png", PngDrawing.Draw(front, WebDotsPerInch), IsLabel: true)
            : null;
    }

    // As the batch's label is printed; what is wrong with it is not this command's to say.
    private Scene? Front(AffectedBatch affected)
    {
        Assessment? a = new Assessor(ground.Lawbook, ground.Catalogue, ground.AsOf)
            .Assess(affected.Batch, null, new Problems())
            .FirstOrDefault(possible => !possible.StopsSale);
        if (a is null || ground.Catalogue.Find<Wax>(a.Candle.Wax, new Problems()) is not { } wax)
        {
            return null;
        }

        var request = new PaperRequest(a, a.Languages[0], wax, ground.Lawbook, ground.Shop, new PaperSettings())
        {
            Catalogue = ground.Catalogue,
            OpensBrand = BrandFiles.WhenAsked(ground.Catalogue),
        };
        return (new LabelPaper().Make(request) as MadePaper)?.Document.Pages[0];
    }
}
