using TrimOut.Office;

namespace TrimOut.Desks.Secrets;

/// <summary>Moves the secret of a credentials file into a store and back. It is never out of the one before it was read back from the other.</summary>
/// <param name="file">The credentials file.</param>
/// <param name="store">The store.</param>
internal sealed class KeptSecret(string file, ISecretStore store)
{
    /// <summary>Puts the secret into the store, and then takes it out of the file.</summary>
    /// <returns>What was done.</returns>
    /// <exception cref="OfficeException">The store refused, did not answer or answers otherwise; the file is as it was.</exception>
    public string Move(CancellationToken stop)
    {
        var office = OfficePlace.Read(file);
        var of = SecretName.Of(office);
        if (office.Password is not { Length: > 0 } secret)
        {
            return SystemSecrets.WithSecret(office, store, stop).Password is { Length: > 0 }
                ? Sentence($"{store.Name} has the secret of {of} already; {file} holds none.")
                : throw new OfficeException(OfficeFault.NoCredentials, $"{file} holds no secret that could go into {store.Name}.");
        }
        string? before;
        try
        {
            before = store.Lookup(of, stop);
            store.Store(of, secret, stop);
            if (store.Lookup(of, stop) != secret)
                throw new OfficeException(OfficeFault.NoCredentials, $"{store.Name} does not hand out what was put into it.");
        }
        catch (OfficeException failed)
        {
            throw new OfficeException(failed.Fault, $"{Sentence(failed.Message)} {file} holds the secret as before.", failed);
        }
        Replace(office with { Password = null, PasswordIn = Credentials.SystemStore });
        return Sentence($"{store.Name} has the secret of {of} now{(before is null || before == secret ? "" : ", in place of another one")}; "
            + $"{file} holds it no more.");
    }

    /// <summary>Puts the secret into the file again, and then has the store forget it.</summary>
    /// <returns>What was done.</returns>
    /// <exception cref="OfficeException">The store has none or did not answer: the file is as it was. Or it did not forget: both have it.</exception>
    public string PutBack(CancellationToken stop)
    {
        var office = OfficePlace.Read(file);
        if (office.Password is { Length: > 0 })
            return $"{file} holds its secret already. To have the store forget what it holds: trimout office keep-secret --forget";
        var whole = SystemSecrets.WithSecret(office with { PasswordIn = Credentials.SystemStore }, store, stop);
        Replace(whole with { PasswordIn = null });
        try
        {
            Forgotten(SecretName.Of(office), stop);
        }
        catch (OfficeException failed)
        {
            throw new OfficeException(failed.Fault, $"{file} holds the secret again, and the store has it still. {Sentence(failed.Message)}", failed);
        }
        return $"{file} holds the secret again, and {store.Name} has forgotten it.";
    }

    /// <summary>Has the store forget the secret; the file is left as it is.</summary>
    /// <returns>What was done.</returns>
    /// <exception cref="OfficeException">It did not.</exception>
    public string Forget(CancellationToken stop)
    {
        var office = OfficePlace.Read(file);
        Forgotten(SecretName.Of(office), stop);
        return Sentence($"{store.Name} holds no secret of {SecretName.Of(office)} any more.")
            + (office.Password is { Length: > 0 } ? "" : $" {file} holds none either: to connect again this device needs a new one (trimout office enroll).");
    }

    private void Forgotten(SecretName of, CancellationToken stop)
    {
        store.Forget(of, stop);
        if (store.Lookup(of, stop) is not null)
            throw new OfficeException(OfficeFault.NoCredentials, $"{store.Name} still hands out the secret of {of}. "
                + "Its keyring may be locked: unlock it, and try again.");
    }

    /// <summary>Writes the file in place of the one before, through a link where it is one: the secret must not stay behind it.</summary>
    private void Replace(Credentials office)
    {
        OwnFile.Write(File.ResolveLinkTarget(file, returnFinalTarget: true)?.FullName ?? file, office.Write(), toTheDisk: true);
        if (OfficePlace.Read(file) != office)
            throw new IOException($"{file} does not hold what was written to it.");
    }

    private static string Sentence(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
