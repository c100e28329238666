using System.Text;
using Chandlery.Core.Law;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law.Approved;

/// <summary>A rule or subject, small enough to be read whole: <c>Law/Approved/&lt;edition&gt;/&lt;subject&gt;.txt</c>.</summary>
/// <param name="Edition">The edition that is asked.</param>
/// <param name="Subject">The rule's group, or what the mixtures are about.</param>
/// <param name="Mixtures">The mixtures.</param>
internal sealed record ApprovedFile(Edition Edition, string Subject, IReadOnlyList<ApprovedMixture> Mixtures)
{
    private const string Received = ".received.txt";

    /// <summary>Where the approved files are.</summary>
    public static string Folder { get; } = Path.Combine(TestLaw.Repository, "tests", "Chandlery.Tests", "Law", "Approved");

    /// <summary>Path below <see cref="Folder"/> without ending, with forward slashes.</summary>
    public string Name => $"{Edition.Id}/{Subject.Replace(",", "", StringComparison.Ordinal).Replace(' ', '-')}";

    /// <summary>The approved text.</summary>
    public string ApprovedPath => Path.Combine(Folder, Name + ".txt");

    /// <summary>What was said instead, until it is approved.</summary>
    public string ReceivedPath => Path.Combine(Folder, Name + Received);

    /// <summary>True for a file that only waits to be approved.</summary>
    public static bool IsReceived(string path) => path.EndsWith(Received, StringComparison.Ordinal);

    /// <summary>What is said now.</summary>
    public string Write()
    {
        var text = new StringBuilder();
        foreach (ApprovedMixture mixture in Mixtures)
        {
            ApprovedText.Say(text, Edition, mixture);
        }

        return text.ToString();
    }
}
