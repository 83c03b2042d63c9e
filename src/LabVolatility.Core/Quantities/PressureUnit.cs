namespace LabVolatility.Core.Quantities;

/// <summary>The units a pressure may be read, reported or compared in.</summary>
public enum PressureUnit
{
    /// <summary>kPa.</summary>
    Kilopascal,

    /// <summary>Pa.</summary>
    Pascal,

    /// <summary>psi: one pound-force on one square inch.</summary>
    Psi,

    /// <summary>bar.</summary>
    Bar,

    /// <summary>mbar.</summary>
    Millibar,

    /// <summary>mmHg, the conventional millimetre of mercury.</summary>
    MillimetreOfMercury,

    /// <summary>inHg, 25.4 conventional millimetres of mercury.</summary>
    InchOfMercury,

    /// <summary>atm, the standard atmosphere.</summary>
    Atmosphere,
}
