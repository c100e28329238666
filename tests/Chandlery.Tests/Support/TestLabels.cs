using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Yaml;

namespace Chandlery.Tests.Support;

/// <summary>Labels of a shape that a test asks for.</summary>
public static class TestLabels
{
    public static LabelRequest Ask(LabelForm form, double width, double height, double corner = 0, double hole = 0) =>
        new(form, new LabelSize(new Millimetres(width), new Millimetres(height)), new Millimetres(corner), new Millimetres(hole));

    public static LabelAttempt Make(Assessment a, LabelRequest? request)
    {
        var problems = new Problems();
        LabelAttempt? result = LabelDocument.Make(
            a with
            {
                Candle = a.Candle with { Label = request },
            },
            TestLaw.Shop,
            TestLaw.Lawbook.Burning,
            problems
        );
        Assert.Empty(problems.Found);
        return result!;
    }
}
