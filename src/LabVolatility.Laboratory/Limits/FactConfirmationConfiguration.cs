using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Limits;

internal sealed class FactConfirmationConfiguration : IEntityTypeConfiguration<FactConfirmation>
{
    public void Configure(EntityTypeBuilder<FactConfirmation> confirmation)
    {
        confirmation.ToTable("fact_confirmations");
        confirmation.HasKey(c => c.Key);
        confirmation.Property(c => c.Key).HasMaxLength(Lengths.Name);
        confirmation.Property(c => c.Source).HasMaxLength(Lengths.Note);
        confirmation.HasOne<Person>().WithMany().HasForeignKey(c => c.ConfirmedBy);
    }
}
