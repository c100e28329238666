using Chandlery.Core.SafetyFiles.Records;

namespace Chandlery.Register;

/// <summary>The register's head as papers that are kept print it: whoever cuts or forges entries later cannot change the paper.</summary>
public static class RegisterHead
{
    /// <summary>A paper that is kept, with the line where there is one.</summary>
    /// <param name="kept">The paper.</param>
    /// <param name="root">The maker's folder.</param>
    public static KeptRecord On(KeptRecord kept, string root) =>
        LineOf(root) is { } line ? kept with { Lines = [.. kept.Lines, line] } : kept;

    /// <summary>The line; null where there is no register yet.</summary>
    /// <param name="root">The maker's folder.</param>
    public static string? LineOf(string root)
    {
        try
        {
            RegisterPlace place = RegisterPlace.OfFolder(root);
            if (!place.Exists)
            {
                return null;
            }

            using RegisterBook book = place.OpenToRead();
            (long number, string hash) = book.Head();
            return number == 0 ? null : $"Head of the register when this was printed: entry {number}, {hash}.";
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return $"The register's head could not be read: {error.Message.TrimEnd('.')}.";
        }
    }
}
