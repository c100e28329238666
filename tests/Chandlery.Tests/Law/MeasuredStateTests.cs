using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>What was measured of a finished liquid belongs to the composition that was measured.</summary>
public sealed class MeasuredStateTests : IDisposable
{
    private const string Stale = "report FL-118 of 2026-10-02 is of the composition before: the label of the new one is not known";
    private readonly MakersFolder folder = new();
    private readonly MakersFolder later = new();

    public void Dispose()
    {
        folder.Dispose();
        later.Dispose();
    }

    private string Changes() => Command.Run("changes", folder.Path, "--to", later.Path).Output;

    [Fact]
    public void Another_blend_makes_a_measured_flash_point_stale()
    {
        later.Change("candles/dune-reeds.yaml", "percent: 20, of: product", "percent: 19, of: product");
        Assert.Contains(Stale, Changes(), StringComparison.Ordinal);
    }

    [Fact]
    public void So_does_another_revision_of_its_oil()
    {
        later.Change("oils/dune-grass.yaml", "share: 20 %", "share: 19 %").Change("oils/dune-grass.yaml", "share: 50 %", "share: 51 %");
        Assert.Contains(Stale, Changes(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_measurement_is_not_stale()
    {
        later
            .Change("candles/dune-reeds.yaml", "percent: 20, of: product", "percent: 19, of: product")
            .Change("candles/dune-reeds.yaml", "report FL-118 of 2026-10-02", "report FL-131 of 2026-11-20");
        Assert.DoesNotContain("composition before", Changes(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_blend_keeps_what_was_measured()
    {
        later.Change("candles/dune-reeds.yaml", "boilingCelsius: 168", "boilingCelsius: 168 # of the same report");
        Assert.DoesNotContain("composition before", Changes(), StringComparison.Ordinal);
    }
}
