using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Proofs;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Paper;

/// <summary>Strips over the lid: the law whole on one face, the front on another.</summary>
public sealed class StripTests
{
    // Lower than the law's label, so that its size is asked for "if possible".
    private static readonly VesselSize LowTin = new(new RectangularSection(new(100), new(70)), new(48));

    [Outside(
        "CLP, Art. 31(1) and Annex I, 1.2.1: one surface, read level as the package stands; sizes, colours and texts measured on the printed PDF"
    )]
    [Theory]
    [InlineData("fig-tin", 60, 46, null)]
    [InlineData("fig-tin", 60, 46, "tideline")]
    [InlineData("fig-tin", 60, 46, "ledger")]
    [InlineData("slate-jar", 56, 76, "leafwork")]
    public void TheLawStandsWholeOnOneFace(string candle, double width, double drop, string? design)
    {
        Assessment plain = TestLaw.Demo($"candles/{candle}.yaml", "IE");
        Assessment a = plain with
        {
            Vessel = candle == "fig-tin" ? plain.Vessel with { Outer = LowTin } : plain.Vessel,
            Candle = plain.Candle with
            {
                Label = TestLabels.Ask(LabelForm.Strip, width, drop),
                Design = design is null
                    ? null
                    : new DesignRequest(design, new TextPlace("candle.yaml", 1, 1), DesignForm.One, null, null, null),
            },
        };
        var made = Assert.IsType<MadeLabel>(TestLaw.Make(new LabelPaper(), a));
        Assert.All(LabelInspector.Inspect(made, a), c => Assert.True(c.Holds, $"{c.What}: {c.Measured}, {c.Required}"));
        StripFaces faces = StripFaces.Of(width, drop, a.Vessel.Outer!)!;
        Scene page = Assert.Single(made.Document.Pages);
        Assert.Equal(faces.Length, page.HeightMm, 6);
        Assert.Contains(made.Panel, new Box?[] { faces.Near, faces.Lid });

        // Read back from the PDF: outside the panel stands what the maker wants there and nothing of the law.
        MeasuredPage printed = MeasuredPage.ReadAll(made.Pdf()).Single();
        Assert.NotEmpty(printed.Within(made.Panel!.Value).Lines);
        Assert.Equal(design is null, printed.Lines.Count == printed.Within(made.Panel.Value).Lines.Count);
        Assert.All(printed.RedSquares, r => Assert.True(made.Panel.Value.Holds(r)));
    }

    [Fact]
    public void FacesEndWhereTheStripBends()
    {
        var size = new VesselSize(new RoundSection(new(100)), new(50));

        // A strip 60 mm wide reaches the rim of a lid 100 mm across after 40 mm at its edges and after 50 mm in its middle.
        StripFaces faces = StripFaces.Of(60, 30, size)!;
        Assert.Equal(160, faces.Length, 6);
        Assert.Equal(new Box(0, 41, 60, 78), faces.Lid);
        Assert.Equal(new Box(0, 131, 60, 29), faces.Near);
        Assert.Null(StripFaces.Of(100, 30, size));
        Assert.Null(StripFaces.Of(60, 40.5, size));
        Assert.Equal(new Box(0, 41, 60, 68), StripFaces.Of(60, 40, new VesselSize(new RectangularSection(new(90), new(70)), new(50)))!.Lid);
    }

    [Theory]
    [InlineData(40, 90, "does not lie on this vessel")]
    [InlineData(12, 30, "does not fit one face")]
    public void WhatCannotBeIsToldWithWhatWouldHelp(double width, double drop, string told)
    {
        Assessment plain = TestLaw.Demo("candles/fig-tin.yaml", "IE");
        Assessment a = plain with { Candle = plain.Candle with { Label = TestLabels.Ask(LabelForm.Strip, width, drop), Design = null } };
        Assert.Contains(told, Assert.IsType<MissingPaper>(TestLaw.Make(new LabelPaper(), a)).Why, StringComparison.Ordinal);
    }
}
