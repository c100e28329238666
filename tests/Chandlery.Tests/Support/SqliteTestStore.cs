using Chandlery.Register;

namespace Chandlery.Tests.Support;

/// <summary>A register in a file.</summary>
public sealed class SqliteTestStore : TestStore
{
    // Made once: each test gets a copy.
    private static readonly Lazy<(byte[] Register, byte[] Witness)> Filled = new(() =>
    {
        string folder = Directory.CreateTempSubdirectory("chandlery-register-").FullName;
        var store = new SqliteTestStore();
        using (RegisterBook register = store.In(folder).Open())
        {
            TestRegisters.Fill(register, TestRegisters.FilledCount);
        }

        (byte[], byte[]) made = (File.ReadAllBytes(store.Named(folder)), File.ReadAllBytes(store.Witness(folder)));
        Directory.Delete(folder, recursive: true);
        return made;
    });

    public override RegisterPlace In(string folder) => RegisterPlace.OfFolder(folder);

    public override string Named(string folder) => Path.Combine(folder, RegisterWriter.FileName);

    public override string Witness(string folder) => Named(folder) + ".head";

    public override void Tamper(string folder, string sql) => TestRegisters.Tamper(Named(folder), sql);

    public override void Fill(string folder)
    {
        File.WriteAllBytes(Named(folder), Filled.Value.Register);
        File.WriteAllBytes(Witness(folder), Filled.Value.Witness);
    }
}
