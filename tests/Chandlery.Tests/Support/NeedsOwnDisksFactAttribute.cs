using System.Diagnostics;

namespace Chandlery.Tests.Support;

/// <summary>A test that mounts disks in a name space of its own; skipped, and said so, where the system does not allow that.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class NeedsOwnDisksFactAttribute : FactAttribute
{
    private static readonly Lazy<bool> Allowed = new(() =>
    {
        try
        {
            using Process probe = Process.Start(
                new ProcessStartInfo(
                    "unshare",
                    ["--user", "--map-root-user", "--mount", "mount", "-t", "tmpfs", "none", Path.GetTempPath()]
                )
                {
                    RedirectStandardError = true,
                }
            )!;
            probe.WaitForExit();
            return probe.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    });

    public NeedsOwnDisksFactAttribute() => Skip = Allowed.Value ? null : "This system does not let a test mount disks (unshare, mount).";
}
