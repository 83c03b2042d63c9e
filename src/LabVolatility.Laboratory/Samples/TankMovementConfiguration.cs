using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Samples;

internal sealed class TankMovementConfiguration : IEntityTypeConfiguration<TankMovement>
{
    public void Configure(EntityTypeBuilder<TankMovement> movement)
    {
        movement.ToTable("tank_movements");
        movement.Property(m => m.Note).HasMaxLength(Lengths.Note);
        movement.Ignore(m => m.ChangesContents);
        movement.HasIndex(m => new { m.TankCode, m.At });
        movement.HasOne<Tank>().WithMany().HasForeignKey(m => m.TankCode);
        movement.HasOne<Person>().WithMany().HasForeignKey(m => m.RecordedBy);
    }
}
