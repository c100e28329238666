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
    /// <summary>Where the approved files are.</summary>
    public static string Folder { get; } = Path.Combine(TestLaw.Repository, "tests", "Chandlery.Tests", "Law", "Approved");

    /// <summary>Path below <see cref="Folder"/> without ending, with forward slashes.</summary>
    public string Name => $"{Edition.Id}/{Subject.Replace(",", "", StringComparison.Ordinal).Replace(' ', '-')}";

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
