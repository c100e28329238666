namespace Chandlery.Core.Law;

/// <summary>An act that put entries into the table of harmonised classes.</summary>
/// <param name="Id">Short name, as the table's rows give it.</param>
/// <param name="Title">Its name as it is cited.</param>
/// <param name="Celex">Its number in the Union's database of law.</param>
/// <param name="Order">Its place in the order in which the acts were adopted; a later act replaces what an earlier one said.</param>
public sealed record LegalAct(string Id, string Title, string Celex, int Order);
