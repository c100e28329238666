using System.Text.RegularExpressions;

namespace Chandlery.Tests.Architecture;

/// <summary>
/// Whoever reads a text returns a <c>Parsed</c>: nothing hands its reason out beside a null, where it can be overlooked.
/// </summary>
public sealed partial class ParsedTests
{
    [Fact]
    public void No_reason_is_handed_out_beside_a_null()
    {
        string[] found =
        [
            .. from file in SourceFiles.All
            from line in SourceFiles.Code(file.Text)
            where ReasonOut().IsMatch(line.Text) && !line.Text.Contains("MaybeNullWhen", StringComparison.Ordinal)
            select $"{file.Path}:{line.Line}: {line.Text.Trim()}",
        ];
        Assert.True(found.Length == 0, string.Join('\n', found));
    }

    [Theory]
    [InlineData("public static CasNumber? TryParse(string text, out string why)", true)]
    [InlineData("if (parse(text, out string reason) is null)", true)]
    [InlineData("if (texts.TryGetValue(path, out string? text))", false)]
    [InlineData("DateOnly.TryParseExact(text, Form, out DateOnly day)", false)]
    public void The_search_tells_reasons_from_values(string code, bool found) => Assert.Equal(found, ReasonOut().IsMatch(code));

    // A value that is there or not goes out as 'string?'; a plain 'string' is what goes with a null.
    [GeneratedRegex(@"\bout string \w")]
    private static partial Regex ReasonOut();
}
