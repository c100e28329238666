using System.Runtime.CompilerServices;
using Chandlery.Core.Declared;

namespace Chandlery.Core.Assessed;

/// <summary>Tells oils apart as objects: comparing their tables line by line would cost more than it saves.</summary>
internal sealed class OilAndEdition : IEqualityComparer<(Oil Oil, string Edition)>
{
    public static readonly OilAndEdition Instance = new();

    public bool Equals((Oil Oil, string Edition) x, (Oil Oil, string Edition) y) => ReferenceEquals(x.Oil, y.Oil) && x.Edition == y.Edition;

    public int GetHashCode((Oil Oil, string Edition) pair) =>
        HashCode.Combine(RuntimeHelpers.GetHashCode(pair.Oil), pair.Edition.GetHashCode(StringComparison.Ordinal));
}
