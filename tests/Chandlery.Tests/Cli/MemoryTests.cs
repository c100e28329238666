using System.Text.Json;
using Chandlery.Cli;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Cli;

/// <summary><c>version --memory</c> tells what nobody has compared with a text.</summary>
public sealed class MemoryTests
{
    [Fact]
    public void What_is_from_memory_is_told_with_its_place_and_reason()
    {
        (int code, string output, string errors) = Command.Run("version", "--memory");
        Assert.Equal((ExitCode.Fine, ""), (code, errors));
        Assert.Contains("data/law/eu-clp/classes.yaml:", output, StringComparison.Ordinal);
        Assert.Contains("unknown: from memory: the paragraph could not be read", output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_rows_come_as_json()
    {
        (int code, string output, _) = Command.Run("version", "--memory", "--json");
        Assert.Equal(ExitCode.Fine, code);
        JsonElement[] rows = [.. JsonDocument.Parse(output).RootElement.EnumerateArray()];
        Assert.Equal(
            Command.Run("version", "--memory").Output.Split('\n').Count(l => l.StartsWith("    ", StringComparison.Ordinal)),
            rows.Length
        );
        Assert.All(rows, r => Assert.True(r.GetProperty("line").GetInt32() > 0 && r.GetProperty("reason").GetString()!.Length > 0));
    }

    [Fact]
    public void What_the_consolidated_text_settles_is_no_longer_from_memory()
    {
        string[] left =
        [
            .. Command
                .Run("version", "--memory")
                .Output.Split('\n')
                .Where(l =>
                    l.Contains("data/law/eu-clp/", StringComparison.Ordinal)
                    || l.Contains("data/law/northern-ireland/", StringComparison.Ordinal)
                ),
        ];
        Assert.Equal(10, left.Count(l => !l.Contains("poison-centres", StringComparison.Ordinal)));
        // That volumes have the bands of masses is owned to in a remark, and no copy at hand has the directive's own clause.
        Assert.Contains(
            "quantityFigures",
            Assert.Single(left, l => l.Contains("label-format", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(left, l => l.Contains("precautions", StringComparison.Ordinal));
    }
}
