using System.CommandLine;
using System.CommandLine.Parsing;
using Chandlery.Core.Making;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Papers;

namespace Chandlery.Cli.Commands;

/// <summary>Options that say how a pour is done.</summary>
internal sealed class PourOptions
{
    private const double WidestGapMm = 500;
    private const double MostLeftoverGrams = 1_000_000;

    private readonly Option<double?> gap = new("--gap")
    {
        Description = "How far below the fill line the first pour ends, mm, such as 20: says what the first pour and the top-up come to.",
        CustomParser = result => Numbers.Decimal("--gap", 0, WidestGapMm)(result),
    };

    private readonly Option<(string, int)[]> also = new("--also")
    {
        Description = "Other candles from the same melt, each with its count, such as slate-tin=6. May be given several times.",
        CustomParser = result => [.. result.Tokens.Select(t => Size(result, t.Value))],
        AllowMultipleArgumentsPerToken = true,
        HelpName = "candle=count",
    };

    private readonly Option<double?> leftover = new("--leftover")
    {
        Description = "Grams of melt left over from an earlier pour that go into this one: what is in them is counted.",
        CustomParser = result => Numbers.Decimal("--leftover", 0, MostLeftoverGrams)(result),
    };

    private readonly Option<string?> leftoverOf = new("--leftover-of")
    {
        Description = "The candle that the leftover is of (file name without .yaml). Default: the same candle.",
    };

    public void AddTo(Command command)
    {
        command.Add(gap);
        command.Add(also);
        command.Add(leftover);
        command.Add(leftoverOf);
    }

    public PourSettings Read(ParseResult parse) =>
        new()
        {
            Gap = parse.GetValue(gap) is { } mm ? new Millimetres(mm) : null,
            Also = parse.GetValue(also) ?? [],
            Leftover = parse.GetValue(leftover) is { } grams and > 0 ? new Grams(grams) : null,
            LeftoverOf = parse.GetValue(leftoverOf),
        };

    private static (string, int) Size(ArgumentResult result, string text)
    {
        int at = text.LastIndexOf('=');
        if (at > 0 && int.TryParse(text[(at + 1)..], out int count) && count is >= 1 and <= PouringPlan.MostCandles)
        {
            return (text[..at], count);
        }

        result.AddError($"'{text}' does not say which candle and how many: write it as slate-tin=6.");
        return ("", 1);
    }
}
