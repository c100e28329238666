namespace Chandlery.Tests.Support;

/// <summary>A test of the published program; skipped, and said so, when CHANDLERY_PROGRAM names none.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class NeedsPublishedFactAttribute : FactAttribute
{
    public NeedsPublishedFactAttribute() => Skip = Command.Published is null ? "CHANDLERY_PROGRAM names no published program." : null;
}
