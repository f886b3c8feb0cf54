/**
 * Signatures in a PDF by the certificate of a person or of a shop: PAdES baseline B-B (ETSI EN 319 142-1) on ISO 32000.
 * What the station itself seals, it seals with its own key, without a certificate.
 */
package org.tenthwise.app.certificate;
