namespace Chandlery.Register;

/// <summary>An entry of the register.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="At">When it was made, in UTC.</param>
/// <param name="By">Who made it.</param>
/// <param name="Content">What it says.</param>
/// <param name="PreviousHash">Hash of the entry before; zeros for the first.</param>
/// <param name="Hash">Hash of this entry with the hash of the one before.</param>
public sealed record RegisterEntry(long Number, string At, string By, RegisterContent Content, string PreviousHash, string Hash);
