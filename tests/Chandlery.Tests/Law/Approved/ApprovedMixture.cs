using Chandlery.Core.Declared;

namespace Chandlery.Tests.Law.Approved;

/// <summary>A mixture of which an approved file holds what is said.</summary>
/// <param name="Title">Its heading in the file.</param>
/// <param name="Lines">What is in it.</param>
/// <param name="ClassesOnly">True where the label and the rest add nothing to read.</param>
internal sealed record ApprovedMixture(string Title, Ingredient[] Lines, bool ClassesOnly = false);
