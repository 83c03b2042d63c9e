using System.Security.Cryptography;
using System.Text;
using LabVolatility.Laboratory.People;

namespace LabVolatility.Web.People;

/// <summary>The code by which whoever started the program proves it, once, while there is no account.</summary>
public sealed class FirstAdministratorCode
{
    private string? _code;

    public bool Open => _code is not null;

    /// <summary>Makes the code and prints it to the console only: a log is kept, a secret must not be.</summary>
    public string Announce()
    {
        _code = OneTimePassword.Make();
        Console.Error.WriteLine($"""

            There is no account yet. Open /first-administrator and give this code, valid until the first account is made:

                {_code}

            """);
        return _code;
    }

    public bool Matches(string? typed) =>
        _code is { } code && typed is not null
        && CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(code), Encoding.UTF8.GetBytes(typed.Trim()));

    public void Close() => _code = null;
}
