namespace LabVolatility.Laboratory.Setup;

/// <summary>What a key of the machine interface opens.</summary>
[Flags]
public enum KeyScopes
{
    None = 0,
    Calculate = 1,
    Read = 2,
    Write = 4,
    Import = 8,
}
